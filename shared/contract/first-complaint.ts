import type { z } from 'zod';

/**
 * Given to `safeParse`, it stops at the first complaint: only one is told, and a million bad rows would make a million of them, which
 * took a minute and gigabytes.
 */
export const atFirstComplaint: z.core.ParseContextInternal<z.core.$ZodIssue> = { abortEarly: true };

import { z } from 'zod';
import { reasonCodes } from '#core/reason.ts';

/** Why something is `null`: where in the answer, a code for programs, and in plain words what would help. */
export const reason = z.strictObject({
  path: z.array(z.union([z.string(), z.number()])).readonly(),
  code: z.enum(reasonCodes),
  needs: z.string(),
});

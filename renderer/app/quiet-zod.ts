import { z } from 'zod';

// The content policy forbids eval, and zod tries it once unless told not to. This file is imported before any schema.
z.config({ jitless: true });

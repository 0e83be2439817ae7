import { z } from 'zod';

// The content policy forbids eval, and zod tries it once unless told not to. Whoever writes a schema in the page imports this file first.
z.config({ jitless: true });

import fc from 'fast-check';

// Made-up cases are the same in every run, so that a run that fails fails again; with SIDEJAR_TEST_SEED=<number> they are others.
fc.configureGlobal({ seed: Number(process.env.SIDEJAR_TEST_SEED ?? 20_261_130) });

export { fc };

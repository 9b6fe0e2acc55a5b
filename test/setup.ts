import * as fc from 'fast-check';

/** The same random values on every run; `FC_SEED=7 npm test` tries others. */
fc.configureGlobal({ seed: Number(process.env['FC_SEED'] ?? 20_261_125) });

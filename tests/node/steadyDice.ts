import fc from 'fast-check';

/**
 * The same throws every time, so that a green run stays green on another machine. Other throws are tried with
 * FC_SEED set to any number; what they find is kept as an example beside its property.
 */
fc.configureGlobal({ seed: Number(process.env['FC_SEED'] ?? 20_261_125) });

/** Why a re-check ended that ended because its joint came apart: it was neither answered nor given up. */
export const TAKEN_APART = 'taken apart';

export const median = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)];
export const p95 = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length * 0.95)];

const round = (value) => Math.round(value * 1000) / 1000;

/** One line of the answer: a value against its floor; without a limit it is only told. */
export const result = (name, value, floor, unit, limit) => ({
  name,
  value: round(value),
  floor: round(floor),
  ratio: round(value / floor),
  unit,
  limit,
});

export const say = (text) => process.stderr.write(`${text}\n`);

// Every single change that doubt may make: one literal or one operator of the calculations, the tables or the fit rules.
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync } from 'vite';

/** What is doubted: the formulas, the tables, and the rules of what fits what. */
export const doubted = ['src/mechanics', 'src/standards', 'src/fit/rules'];

/** Tables and rules by which a person can be hurt: a change that survives here is a gap to be closed at once. */
const SAFETY =
  /standards\/screws\/(nutFactors|friction|torque|toolClasses|threadEngagement|embedment|propertyClasses|lockers|cureGrid|through|screwMarks)|standards\/checks\/(recheckSchedule|releaseRules|rideCheck|pull|stopping)|standards\/jointKinds|rules\/(brake|headset)/;

const swaps = {
  '<': ['>=', '<='],
  '<=': ['>', '<'],
  '>': ['<=', '>='],
  '>=': ['<', '>'],
  '===': ['!=='],
  '!==': ['==='],
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '**': ['*'],
  '%': ['*'],
  '&&': ['||'],
  '||': ['&&'],
  '+=': ['-='],
  '-=': ['+='],
  '*=': ['/='],
  '/=': ['*='],
};
const hands = { left: 'right', right: 'left' };

/** Wrappers that only concern types; what they hold is an ordinary expression. */
const WRAPPERS = new Set(['TSAsExpression', 'TSSatisfiesExpression', 'TSNonNullExpression']);
const TYPE_KEYS = new Set(['typeAnnotation', 'typeArguments', 'typeParameters', 'returnType']);

const isNode = (value) => value !== null && typeof value === 'object' && typeof value.type === 'string';
const signed = (node) =>
  node?.type === 'UnaryExpression' && node.operator === '-' && typeof node.argument.value === 'number'
    ? -node.argument.value
    : typeof node?.value === 'number'
      ? node.value
      : undefined;

/** The node at the same place of another row: the same element, property or argument. */
function twin(row, steps) {
  let at = row;
  for (const step of steps) {
    if (!isNode(at)) return undefined;
    if (step.kind === 'element') at = at.elements?.[step.at];
    else if (step.kind === 'argument') at = at.arguments?.[step.at];
    else at = at.properties?.find((property) => property.key?.name === step.key)?.value;
    while (isNode(at) && WRAPPERS.has(at.type)) at = at.expression;
  }
  return at;
}

/** Figures of the neighbours in the lists a literal stands in: the next element, or the same figure of the next row. */
function neighbours(node, path) {
  const found = [];
  const steps = [];
  for (let level = path.length - 1; level >= 0 && steps.length < 4; level -= 1) {
    const { parent, key, index, child } = path[level];
    if (parent.type === 'ArrayExpression') {
      for (const other of [parent.elements[index - 1], parent.elements[index + 1]]) {
        const value = signed(twin(other, steps));
        if (value !== undefined) found.push(value);
      }
      steps.unshift({ kind: 'element', at: index });
    } else if (parent.type === 'CallExpression' && key === 'arguments') {
      steps.unshift({ kind: 'argument', at: index });
    } else if (parent.type === 'Property' && key === 'value') {
      steps.unshift({ kind: 'property', key: parent.key?.name });
    } else if (
      !['ObjectExpression', 'UnaryExpression', ...WRAPPERS].includes(parent.type) &&
      child !== node
    ) {
      break;
    }
  }
  return found;
}

function otherNumbers(node, path) {
  const { value } = node;
  const parent = path.at(-1)?.parent;
  const own = parent?.type === 'UnaryExpression' ? -value : value;
  // A count changes by one, a measure by a few per cent.
  const near =
    Number.isInteger(value) && value < 25
      ? [value + 1, ...(value > 1 ? [value - 1] : [])]
      : [1.04, 0.96].map((factor) => Number((value * factor).toPrecision(6)));
  const beside = neighbours(node, path)
    .filter((other) => other !== own)
    .map((other) => (own === value ? other : -other))
    .filter((other) => other >= 0);
  return [...near, ...beside].map(String);
}

/** The choices at one place of the source, each a text that takes the place of what stands there. */
function* places(code, node, path = []) {
  if (node.type.startsWith('TS') && !WRAPPERS.has(node.type)) return;
  if (node.type.startsWith('Import') || node.type === 'ExportAllDeclaration') return;
  if (node.type === 'Literal' && typeof node.value === 'number')
    yield { start: node.start, end: node.end, to: otherNumbers(node, path) };
  if (node.type === 'Literal' && typeof node.value === 'string' && hands[node.value])
    yield { start: node.start, end: node.end, to: [`'${hands[node.value]}'`], hand: true };
  if (['BinaryExpression', 'LogicalExpression', 'AssignmentExpression'].includes(node.type)) {
    const to = swaps[node.operator];
    const [from, until] = [node.left.end, node.right.start];
    const start = code.indexOf(node.operator, from);
    if (to && start >= 0 && start < until) yield { start, end: start + node.operator.length, to };
  }
  if (node.type === 'UnaryExpression' && node.operator === '-')
    yield { start: node.start, end: node.start + 1, to: [''] };
  for (const [key, value] of Object.entries(node)) {
    if (TYPE_KEYS.has(key)) continue;
    // The key of a property says what it is; only its value is a figure.
    if (key === 'key' && !node.computed) continue;
    if (Array.isArray(value)) {
      for (const [index, child] of value.entries())
        if (isNode(child)) yield* places(code, child, [...path, { parent: node, key, index, child }]);
    } else if (isNode(value)) {
      yield* places(code, value, [...path, { parent: node, key, index: 0, child: value }]);
    }
  }
}

const filesBelow = (folder) =>
  readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? filesBelow(path) : [path];
  });

/**
 * All places of the doubted files.
 * @param top the folder of the project
 * @returns per place: file, line, start and end in the text, what may stand there instead, whether it is a safety matter
 */
export function allPlaces(top) {
  const files = doubted
    .flatMap((folder) => filesBelow(join(top, folder)))
    .filter((path) => path.endsWith('.ts'))
    .sort();
  return files.flatMap((path) => {
    const code = readFileSync(path, 'utf8');
    const file = path.slice(top.length);
    const { program, errors } = parseSync(path, code);
    if (errors.length > 0) throw new Error(`${file} does not parse`);
    return [...places(code, program)].map((place) => ({
      ...place,
      file,
      line: code.slice(0, place.start).split('\n').length,
      from: code.slice(place.start, place.end),
      safety: SAFETY.test(file) || place.hand === true,
    }));
  });
}

/** Throws that can be thrown again: the same seed gives the same numbers from 0 up to 1. */
export function dice(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/**
 * A sample of changes, each at another place.
 * @param count how many; fewer come back where there are fewer places
 */
export function sample(places, seed, count) {
  const throwDie = dice(seed);
  const pool = [...places];
  const drawn = [];
  while (drawn.length < count && pool.length > 0) {
    const [place] = pool.splice(Math.floor(throwDie() * pool.length), 1);
    const to = place.to[Math.floor(throwDie() * place.to.length)];
    drawn.push({ ...place, to });
  }
  return drawn;
}

// Every text that the product can show, with its place: read out of the source, so that none is missed that no screen shows today.
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync } from 'vite';

/** What a browser reads and a person does not. */
const SILENT_ATTRIBUTES = new Set([
  'class',
  'id',
  'for',
  'd',
  'type',
  'href',
  'src',
  'style',
  'viewBox',
  'key',
  'transform',
  'points',
]);
/** Properties whose value a person reads though it is one word. */
const SPOKEN =
  /^(label|title|hint|name|words|text|said|heading|sentence|note|why|act|alt|placeholder|aria-label|aria-description|summary|empty)$/i;
const TYPES = /^TS(?!AsExpression|SatisfiesExpression|NonNullExpression)/;

const isNode = (value) => value !== null && typeof value === 'object' && typeof value.type === 'string';
const squeezed = (text) => text.replaceAll(/\s+/g, ' ').trim();
/** Two words in a row, or a sentence: what stands in no name, no address and no class. */
const reads = (text) =>
  /\p{L}[\p{L}’',;:]*[ \u00a0][\p{L}{(“]/u.test(text) && !/^[a-z-]+( [a-z]+-[a-z-]+)+$/.test(text);

function filesUnder(folder) {
  return readdirSync(folder)
    .map((name) => join(folder, name))
    .flatMap((path) => (statSync(path).isDirectory() ? filesUnder(path) : [path]))
    .filter((path) => /\.tsx?$/.test(path));
}

const templateText = ({ quasis, expressions }) =>
  quasis.map(({ value }, at) => value.cooked + (at < expressions.length ? '{…}' : '')).join('');

/** The children of an element as one line, so that a sentence with a figure in it stays a sentence. */
const childrenText = (children) =>
  children
    .map((child) => {
      if (child.type === 'JSXText') return child.value;
      if (child.type !== 'JSXExpressionContainer') return ' ';
      const { expression } = child;
      if (expression.type === 'Literal' && typeof expression.value === 'string') return expression.value;
      return expression.type === 'JSXEmptyExpression' ? '' : '{…}';
    })
    .join('');

/**
 * The texts of one file, in the order of their lines.
 * @param path where the file lies, named with each text
 * @param source what stands in it
 * @returns {{ path: string, line: number, text: string }[]}
 */
export function textsOf(path, source) {
  const found = [];
  const keep = (start, text) => {
    const line = source.slice(0, start).split('\n').length;
    found.push({ path, line, text: squeezed(text) });
  };
  const walk = (node, spoken) => {
    if (TYPES.test(node.type)) return;
    switch (node.type) {
      case 'ImportDeclaration':
      case 'ExportAllDeclaration':
        return;
      case 'Literal':
        if (typeof node.value === 'string' && (reads(node.value) || (spoken && /\p{L}/u.test(node.value))))
          keep(node.start, node.value);
        return;
      case 'TemplateLiteral': {
        const text = templateText(node);
        if (reads(text) || (spoken && /\p{L}/u.test(text.replaceAll('{…}', '')))) keep(node.start, text);
        for (const expression of node.expressions) walk(expression, false);
        return;
      }
      case 'JSXElement':
      case 'JSXFragment': {
        const text = childrenText(node.children);
        if (/\p{L}/u.test(text.replaceAll('{…}', ''))) keep(node.children[0].start, text);
        break;
      }
      case 'JSXAttribute':
        if (SILENT_ATTRIBUTES.has(node.name.name)) return;
        if (node.value) walk(node.value, SPOKEN.test(node.name.name));
        return;
      case 'Property':
        if (node.computed) walk(node.key, false);
        walk(node.value, SPOKEN.test(node.key.name ?? node.key.value ?? ''));
        return;
      case 'JSXExpressionContainer':
      case 'ConditionalExpression':
      case 'LogicalExpression':
      case 'TSAsExpression':
      case 'TSSatisfiesExpression': {
        for (const [key, value] of Object.entries(node))
          if (isNode(value)) walk(value, spoken && key !== 'test');
        return;
      }
      // A developer reads it, in a report.
      case 'NewExpression':
        if (/Error$/.test(node.callee.name ?? '')) return;
        break;
    }
    for (const value of Object.values(node)) {
      if (Array.isArray(value)) for (const item of value) isNode(item) && walk(item, false);
      else if (isNode(value)) walk(value, false);
    }
  };
  walk(parseSync(path, source).program, false);
  return found.sort((a, b) => a.line - b.line);
}

/** The texts of the whole product, page and worker. */
export const allTexts = () =>
  ['src', 'sw']
    .flatMap(filesUnder)
    .flatMap((path) => textsOf(path.replaceAll('\\', '/'), readFileSync(path, 'utf8')));

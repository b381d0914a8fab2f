/**
 * The few properties that decide whether and how an element is an area: fill, fill-rule, stroke, display, visibility,
 * opacity. Order of strength: presentation attribute, style sheet (element, class, id), style attribute (SVG 2, 6.6;
 * CSS Cascade). Only plain selectors (element, .class, #id and lists of them) are understood.
 */
import type { SvgNode } from './tree';

export interface Paint {
  readonly filled: boolean;
  readonly stroked: boolean;
  readonly rule: 'evenOdd' | 'nonZero';
  readonly visible: boolean;
}
/** What the outermost element inherits (SVG 2: fill black, stroke none, non-zero). */
export const INITIAL_PAINT: Paint = { filled: true, stroked: false, rule: 'nonZero', visible: true };

type Declarations = ReadonlyMap<string, string>;
/** Declarations by selector ("path", ".hole", "#rim", "*"), later ones over earlier ones. */
export type Sheet = ReadonlyMap<string, Declarations>;

const PROPERTIES: ReadonlySet<string> = new Set(
  'fill fill-rule fill-opacity stroke display visibility opacity'.split(' '),
);

function readDeclarations(text: string): Declarations {
  const found = new Map<string, string>();
  for (const piece of text.split(';')) {
    const colon = piece.indexOf(':');
    if (colon < 0) continue;
    const name = piece.slice(0, colon).trim().toLowerCase();
    const value = piece
      .slice(colon + 1)
      .replace(/!\s*important/i, '')
      .trim();
    if (PROPERTIES.has(name)) found.set(name, value.toLowerCase());
  }
  return found;
}

/** Without comments; unclosed ones reach to the end. */
const withoutComments = (css: string): string =>
  css
    .split('/*')
    .map((piece, i) => (i === 0 ? piece : piece.includes('*/') ? piece.slice(piece.indexOf('*/') + 2) : ''))
    .join('');

/** Rules of a style sheet; selectors that are not plain are passed over. */
export function readSheet(css: string): Sheet {
  const sheet = new Map<string, Map<string, string>>();
  for (const block of withoutComments(css).split('}')) {
    const brace = block.lastIndexOf('{');
    if (brace < 0) continue;
    const declarations = readDeclarations(block.slice(brace + 1));
    if (declarations.size === 0) continue;
    for (const part of block.slice(0, brace).split(',')) {
      const selector = part.trim();
      if (!/^(\*|[.#]?[\w-]+)$/.test(selector)) continue;
      const own = sheet.get(selector) ?? new Map<string, string>();
      for (const [name, value] of declarations) own.set(name, value);
      sheet.set(selector, own);
    }
  }
  return sheet;
}

/** Selectors that match the element, weakest first. */
function selectorsOf(node: SvgNode): string[] {
  const classes = (node.attributes.class ?? '').split(/\s+/).filter((name) => name !== '');
  return ['*', node.tag, ...classes.map((name) => `.${name}`), `#${node.attributes.id ?? ''}`];
}

/** The element's own declarations, strongest winning. */
export function declarationsOf(node: SvgNode, sheet: Sheet): Declarations {
  const found = new Map<string, string>();
  for (const name of PROPERTIES) {
    const value = node.attributes[name];
    if (value !== undefined) found.set(name, value.trim().toLowerCase());
  }
  if (sheet.size > 0)
    for (const selector of selectorsOf(node))
      for (const [name, value] of sheet.get(selector) ?? []) found.set(name, value);
  for (const [name, value] of readDeclarations(node.attributes.style ?? '')) found.set(name, value);
  return found;
}

const isZero = (value: string | undefined): boolean => value !== undefined && Number.parseFloat(value) === 0;

/** True where nothing of the element and its children is drawn. */
export const isHidden = (own: Declarations): boolean =>
  own.get('display') === 'none' || isZero(own.get('opacity'));

/** The element's paint from its parent's and its own declarations. */
export function paintOf(parent: Paint, own: Declarations): Paint {
  const paints = (name: 'fill' | 'stroke', inherited: boolean): boolean => {
    const value = own.get(name);
    return value === undefined || value === 'inherit'
      ? inherited
      : value !== 'none' && value !== 'transparent';
  };
  const rule = own.get('fill-rule');
  const visibility = own.get('visibility');
  return {
    filled: paints('fill', parent.filled) && !isZero(own.get('fill-opacity')),
    stroked: paints('stroke', parent.stroked),
    rule: rule === 'evenodd' ? 'evenOdd' : rule === 'nonzero' ? 'nonZero' : parent.rule,
    visible: visibility === undefined || visibility === 'inherit' ? parent.visible : visibility === 'visible',
  };
}

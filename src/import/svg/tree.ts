/**
 * SVG text to a tree of elements, by a strict XML parser. Own entities are refused (they can multiply a short file to
 * gigabytes), and so are nestings deeper than a drawing needs.
 */
import { SaxesParser } from 'saxes';
import { fail, ok, type Result } from '../../layout/result';
import { MOST_LEVELS, MOST_VISITS } from '../limits';
import type { Reading } from '../steps';

export interface SvgNode {
  /** Local name, such as "path"; names of other vocabularies keep their prefix. */
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: SvgNode[];
  /** Text directly inside (kept for style sheets only). */
  text: string;
}
export interface SvgTree {
  readonly root: SvgNode;
  readonly byId: ReadonlyMap<string, SvgNode>;
  /** All style sheets, one after the other. */
  readonly sheet: string;
}

const SVG_NAMESPACE = 'http://www.w3.org/2000/svg';

/** The prefix (with its colon) that the outermost element binds to SVG; "svg:" where it binds none. */
function svgPrefix(attributes: Readonly<Record<string, string>>): string {
  const bound = Object.keys(attributes).find(
    (key) => key.startsWith('xmlns:') && attributes[key].trim() === SVG_NAMESPACE,
  );
  return bound === undefined ? 'svg:' : `${bound.slice('xmlns:'.length)}:`;
}

class Builder {
  root: SvgNode | null = null;
  readonly byId = new Map<string, SvgNode>();
  sheet = '';
  /** A fault that ends the reading. */
  stop: Result<never> | null = null;
  private readonly stack: SvgNode[] = [];
  private count = 0;
  private prefix = '';

  open(name: string, attributes: Record<string, string>): void {
    if (this.root === null) this.prefix = svgPrefix(attributes);
    const tag = name.startsWith(this.prefix) ? name.slice(this.prefix.length) : name;
    const node: SvgNode = { tag, attributes, children: [], text: '' };
    this.stack[this.stack.length - 1]?.children.push(node);
    this.root ??= node;
    this.stack.push(node);
    const { id } = attributes;
    if (id !== undefined && !this.byId.has(id)) this.byId.set(id, node);
    this.count += 1;
    if (this.count > MOST_VISITS) this.stop ??= fail('outlines-too-much', { found: this.count });
    if (this.stack.length > MOST_LEVELS) this.stop ??= fail('outlines-too-deep', { limit: MOST_LEVELS });
  }
  close(): void {
    const node = this.stack.pop();
    if (node?.tag === 'style') this.sheet += `${node.text}\n`;
  }
  write(text: string): void {
    const node = this.stack[this.stack.length - 1];
    if (node?.tag === 'style') node.text += text;
  }
}

/** Characters handed to the parser at a time, so that a fault stops it early. */
const CHUNK = 65_536;

/** Reads the document; a fault names line and column. */
export function* readTree(text: string): Reading<Result<SvgTree>> {
  const builder = new Builder();
  const parser = new SaxesParser({ xmlns: false });
  const broken = (detail: string): void => {
    builder.stop ??= fail('svg-broken', { detail, line: parser.line, column: parser.column });
  };
  parser.on('error', (error) => broken(error.message.replace(/^\d+:\d+: /, '').replace(/\.$/, '')));
  parser.on('doctype', (doctype) => {
    if (/<!ENTITY/i.test(doctype)) builder.stop ??= fail('svg-entities', { line: parser.line });
  });
  parser.on('opentag', (tag) => builder.open(tag.name, tag.attributes));
  parser.on('closetag', () => builder.close());
  parser.on('text', (piece) => builder.write(piece));
  parser.on('cdata', (piece) => builder.write(piece));
  for (let at = 0; at < text.length && builder.stop === null; at += CHUNK) {
    parser.write(text.slice(at, at + CHUNK));
    yield 'text';
  }
  if (builder.stop === null) parser.close();
  if (builder.stop !== null) return builder.stop;
  const { root, byId, sheet } = builder;
  if (root === null || root.tag !== 'svg') return fail('svg-no-root', { found: root?.tag ?? '?' });
  return ok({ root, byId, sheet });
}

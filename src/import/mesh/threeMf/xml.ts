/**
 * XML of a package part, pushed piece by piece into a strict parser. Document types are refused (ISO/IEC 25422 forbids
 * them, and they can multiply a short file). Elements of the document's own vocabulary come without prefix.
 */
import { SaxesParser } from 'saxes';
import { fail, type Param, type Result, type Words } from '../../../layout/result';
import { MOST_LEVELS } from '../limits';
import type { TextSink } from './unpack';

/** Characters without the end of a tag: no model has so many, a file made to swell has. */
const MOST_WITHOUT_TAG = 4_000_000;

export type Attributes = Readonly<Record<string, string>>;
export interface XmlHandler {
  /** @returns a fault, or its words alone, null where the element is sound */
  open(name: string, attributes: Attributes): Result<never> | Words | null;
  close?(name: string): void;
}

/** The prefix (with its colon) under which the outermost element stands; "" where it has none. */
const prefixOf = (name: string): string => name.slice(0, name.indexOf(':') + 1);

/** A sink that parses one part. Fault: mesh-3mf-broken, and what the handler returns. */
export function xmlSink(part: string, handler: XmlHandler): TextSink {
  const parser = new SaxesParser({ xmlns: false });
  let stop: Result<never> | null = null;
  let prefix: string | null = null;
  let level = 0;
  let lastTag = 0;
  const broken = (found: Param): void => {
    const detail: Words = { text: 'line {line}: {detail}', values: { line: parser.line, detail: found } };
    stop ??= fail('mesh-3mf-broken', { part, detail });
  };
  const local = (name: string): string =>
    prefix !== null && prefix !== '' && name.startsWith(prefix) ? name.slice(prefix.length) : name;
  parser.on('error', (error) => broken(error.message.replace(/^\d+:\d+: /, '').replace(/\.$/, '')));
  parser.on('doctype', () => broken({ text: 'a document type is not accepted' }));
  parser.on('opentag', (tag) => {
    prefix ??= prefixOf(tag.name);
    level += 1;
    lastTag = parser.position;
    if (stop !== null) return;
    if (level > MOST_LEVELS)
      broken({ text: 'elements nest more than {most} deep', values: { most: MOST_LEVELS } });
    const fault = handler.open(local(tag.name), tag.attributes);
    if (fault !== null && 'text' in fault) broken(fault);
    else stop ??= fault;
  });
  parser.on('closetag', (tag) => {
    level -= 1;
    lastTag = parser.position;
    if (stop === null) handler.close?.(local(tag.name));
  });
  return (text, last) => {
    if (stop === null) parser.write(text);
    if (parser.position - lastTag > MOST_WITHOUT_TAG)
      broken({ text: '{count} characters without a tag', values: { count: MOST_WITHOUT_TAG } });
    if (last && stop === null) parser.close();
    return stop;
  };
}

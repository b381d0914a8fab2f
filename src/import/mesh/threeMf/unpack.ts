/**
 * Parts of a 3MF package (a ZIP; Open Packaging Conventions, ISO/IEC 29500-2) as text, in the order they stand in. The
 * file is pushed in small pieces and what comes out is counted, so that a file made to swell is stopped early.
 */
import { DecodeUTF8, Unzip, UnzipInflate, type UnzipFile } from 'fflate';
import { fail, ok, type Param, type Result } from '../../../layout/result';
import { BYTES_PER_MB, MOST_UNPACKED_BYTES } from '../limits';
import type { Watching } from '../stl';

/** A byte of deflated data becomes at most about a thousand, so one push yields at most 4 MB. */
const PUSHED_BYTES = 4096;
const CENTRAL_DIRECTORY = [0x50, 0x4b, 1, 2];

/** Takes the text of one part, piece by piece. A Result that is returned stops the unpacking. */
export type TextSink = (text: string, last: boolean) => Result<never> | null;

/** Without "." and "..", as a reference from the package's root is resolved (RFC 3986, 5.2.4 [memory]). */
function resolved(path: string): string {
  const steps: string[] = [];
  for (const step of path.split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '.' && step !== '') steps.push(step);
  }
  return steps.join('/');
}

/** Part names are compared without case and without the leading slash (ISO/IEC 29500-2, 9.1.1 [memory]). */
export const partName = (name: string): string => {
  let plain = name;
  try {
    plain = decodeURIComponent(name);
  } catch {
    // A name that is not percent-encoded stands as it is.
  }
  return resolved(plain.replaceAll('\\', '/')).toLowerCase();
};

/** As many as a call takes for its arguments in every browser. */
const UNITS_AT_ONCE = 8192;

function joined(one: Uint8Array, other: Uint8Array): Uint8Array<ArrayBuffer> {
  const all = new Uint8Array(one.length + other.length);
  all.set(one);
  all.set(other, one.length);
  return all;
}

/** UTF-16 to text as it comes; a byte without its other half waits for it. */
class DecodeUTF16 {
  private half = new Uint8Array(0);
  constructor(
    private readonly lowFirst: boolean,
    private readonly heard: (piece: string, last: boolean) => void,
  ) {}

  push(bytes: Uint8Array, last: boolean): void {
    const all = joined(this.half, bytes);
    const even = all.length - (all.length % 2);
    this.half = all.slice(even);
    if (last && this.half.length > 0) throw new Error('half a letter');
    const units = new Uint16Array(even / 2);
    for (let i = 0; i < units.length; i++) {
      const [a, b] = [all[2 * i], all[2 * i + 1]];
      units[i] = this.lowFirst ? a + 256 * b : 256 * a + b;
    }
    let text = '';
    for (let i = 0; i < units.length; i += UNITS_AT_ONCE)
      text += String.fromCharCode(...units.subarray(i, i + UNITS_AT_ONCE));
    this.heard(text, last);
  }
}

/** Bytes to text as they come: UTF-8, or UTF-16 where a byte order mark says so; a package may have both (ISO/IEC 29500-2 [memory]). */
class PartText {
  private decoder: Pick<DecodeUTF16, 'push'> | null = null;
  private first = new Uint8Array(0);
  constructor(private readonly heard: (piece: string, last: boolean) => void) {}

  /** Throws where the bytes are no text. */
  push(bytes: Uint8Array, last: boolean): void {
    if (this.decoder) return this.decoder.push(bytes, last);
    this.first = joined(this.first, bytes);
    if (this.first.length < 2 && !last) return;
    this.decoder = this.decoderFor(this.first);
    this.decoder.push(this.first, last);
  }

  private decoderFor([a, b]: Uint8Array): Pick<DecodeUTF16, 'push'> {
    if (a === 0xff && b === 0xfe) return new DecodeUTF16(true, this.heard);
    if (a === 0xfe && b === 0xff) return new DecodeUTF16(false, this.heard);
    return new DecodeUTF8((piece, last) => this.heard(piece, last ?? false));
  }
}

class Unpacking {
  /** What ends the reading. */
  stop: Result<never> | null = null;
  /** Parts that were begun and not ended. */
  open = 0;
  private bytes = 0;

  constructor(
    private readonly sinkFor: (part: string) => TextSink | null,
    private readonly most_bytes: number,
  ) {}

  begin(file: UnzipFile): void {
    const sink = this.sinkFor(partName(file.name));
    if (sink === null || this.stop !== null) return;
    if (file.compression !== 0 && file.compression !== 8) {
      this.stop = broken({
        text: '{name} is packed by method {method}',
        values: { name: file.name, method: file.compression },
      });
      return;
    }
    this.open += 1;
    const text = new PartText((piece, last) => {
      this.stop ??= sink(piece, last);
    });
    file.ondata = (error, data, last) => this.take(file.name, text, error, data, last);
    file.start();
  }

  private take(
    name: string,
    text: PartText,
    error: Error | null,
    data: Uint8Array | null,
    last: boolean,
  ): void {
    if (this.stop !== null) return;
    if (error !== null || data === null) {
      this.stop = broken(
        error === null
          ? { text: '{name}: no data', values: { name } }
          : { text: '{name}: {detail}', values: { name, detail: error.message } },
      );
      return;
    }
    this.bytes += data.length;
    if (this.bytes > this.most_bytes) {
      const limit = this.most_bytes / BYTES_PER_MB;
      this.stop = fail('mesh-too-much', { limit, what: { text: 'MB when unpacked' } });
      return;
    }
    if (last) this.open -= 1;
    try {
      text.push(data, last);
    } catch {
      this.stop ??= broken({ text: '{name} is neither UTF-8 nor UTF-16 text', values: { name } });
    }
  }
}

const broken = (detail: Param): Result<never> => fail('mesh-zip-broken', { detail });

/**
 * Hands the text of every part that `sinkFor` has a sink for to it.
 * @param most_bytes what the parts that have a sink may unpack to, all together
 * Faults: mesh-zip-broken, mesh-too-much, mesh-truncated, and what a sink returns.
 */
export function unpack(
  bytes: Uint8Array,
  sinkFor: (part: string) => TextSink | null,
  watch: Watching,
  most_bytes = MOST_UNPACKED_BYTES,
): Result<null> {
  const unpacking = new Unpacking(sinkFor, most_bytes);
  const zip = new Unzip((file) => unpacking.begin(file));
  zip.register(UnzipInflate);
  try {
    for (let at = 0; at < bytes.length && unpacking.stop === null; at += PUSHED_BYTES) {
      zip.push(bytes.subarray(at, at + PUSHED_BYTES), at + PUSHED_BYTES >= bytes.length);
      if (at % (64 * PUSHED_BYTES) === 0) watch(at / bytes.length);
    }
  } catch (error) {
    unpacking.stop ??= hasDirectory(bytes)
      ? broken(error instanceof Error ? error.message : { text: 'it is no ZIP' })
      : cutOff();
  }
  if (unpacking.stop !== null) return unpacking.stop;
  return unpacking.open > 0 || !hasDirectory(bytes) ? cutOff() : ok(null);
}

const cutOff = (): Result<never> =>
  fail('mesh-truncated', { detail: { text: 'the ZIP ends before its directory' } });

/** The list of parts stands at the end of a ZIP; where it is missing, the file was cut off. */
function hasDirectory(bytes: Uint8Array): boolean {
  for (let i = bytes.length - 4; i >= 0; i--)
    if (CENTRAL_DIRECTORY.every((byte, k) => bytes[i + k] === byte)) return true;
  return false;
}

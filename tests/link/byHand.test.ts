/**
 * The prefix 1 as the heads of src/link describe it, written and read by a second hand: everything here is made of
 * node's zlib, Buffer and SHA-256 and of bytes that are written out, nothing of src/link but its border. What is
 * expected is the layout file, not what the code made of it.
 */
import { createHash } from 'node:crypto';
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { readLayoutValue } from '../../src/layout/read';
import type { Layout } from '../../src/layout/types';
import { decodeComparison, decodeLink, encodeLink } from '../../src/link';
import { DICTIONARY_1 } from '../../src/link/dictionary1';

const MACHINE =
  '{"buildHeight_mm":200,"gasFlow":{"towards_deg":270},' +
  '"lasers":[{"foot_mm":[-50,0],"id":"L1","on":true,"power_W":450,"reach":null,"workingHeight_mm":540},' +
  '{"foot_mm":[50,0],"id":"L2","on":false,"power_W":450,"reach":{"~":0},"workingHeight_mm":540}],' +
  '"name":"Two lasers","platform":{"depth_mm":200,"keepOuts":[{"~":0}],"margin_mm":5,"width_mm":200},' +
  '"powder":{"feed_l":60,"overflow_l":25,"residueInterval_laserH":240},' +
  '"recoater":{"bothWays_s":7.5,"mode":"oneWay","oneWay_s":10,"towards_deg":0}}';
const PROCESS =
  '{"contourSpeed_mm_s":600,"contours":1,"density_g_cm3":4.43,"doseFactor":2,"hatchInset_mm":0,"hatch_mm":0.1,' +
  '"layer_mm":0.06,"minLayer_s":0,"name":"Ti","packing":0.6,"pieceGap_s":0.02,"seamOverlap_mm":0,"speed_mm_s":1200,' +
  '"vectorCount":"area","vectorGap_ms":0.4,"vector_mm":10}';
const LIMITS =
  '{"chainGap_mm":0.01,"crumbArea_mm2":4,"crumbWidth_mm":1.5,"plumeHalfWidth_mm":10,"spacing_mm":3}';

/** The text of a body, with the rings of keep-out and reach left out: `{"~":0}`. */
const form = (name: string): string =>
  `{"allocation":"balanced","format":"evenplate-layout","limits":${LIMITS},"machine":${MACHINE},"name":"${name}",` +
  `"note":"","parts":["P01",["P02",{"laser":"L1","seams":"none"}]],"process":${PROCESS},"shapes":["block","pin"],` +
  '"version":1,"zoning":{"strategy":"wholeField"}}';

/**
 * LEB128 bytes of the numbers, folded where signed: 0, −1, 1, −2, 2 … are 0, 1, 2, 3, 4 [published: DWARF 5, 7.6;
 * Protocol Buffers encoding, "Signed Integers"].
 */
const whole = (value: number): number[] =>
  value < 128 ? [value] : [(value % 128) + 128, ...whole(Math.floor(value / 128))];
const signed = (value: number): number[] => whole(value < 0 ? -2 * value - 1 : 2 * value);

/** Of one layout, in micrometres. */
const NUMBERS = [
  // block: two slabs, up to 10 and 25.5 mm; the upper one has the same ring and a hole
  [whole(2), signed(10_000), whole(1)],
  // four points as they are: 2·4 + 0; starts at −10, −5; steps 20, 0 / 0, 10 / −20, 0
  [whole(8), signed(-10_000), signed(-5_000)],
  [signed(20_000), signed(0), signed(0), signed(10_000), signed(-20_000), signed(0)],
  [signed(15_500), whole(2), whole(1), whole(0)],
  // a circle: 0; at 1, 2, counted from where the ring before began; radius 3.125
  [whole(0), signed(11_000), signed(7_000), whole(3_125)],
  // pin: one slab up to 40 mm; an arc of three equal right turns of 0.01 mm each: 2·4 + 1; starts at 0, 0
  [whole(1), signed(40_000), whole(1)],
  [whole(9), signed(-1_000), signed(-2_000)],
  // 3, 0 / 3, 1 surprise by all of it and by 3, 1 less 3, 0 turned by nothing (there is no step before the first)
  [signed(3_000), signed(0), signed(3_000), signed(1_000)],
  // (3,1)·(3,1)/(3,0) = 2.667, 2 (rounded 2667, 2000); the step is 2, 2: surprise −667, 0
  [signed(-667), signed(0)],
  // parts: P01 block at 30.001, −40, turned 90.5°; P02 pin at −20, −40
  [whole(0), signed(30_001), signed(-40_000), whole(90_500)],
  [whole(1), signed(-50_001), signed(0), whole(0)],
  // the reach of L2 (keys sorted: lasers before platform): the block's ring again; the keep-out: a circle at −90, 90, r 4
  [whole(1), whole(0)],
  [whole(0), signed(-90_000), signed(90_000), whole(4_000)],
].flat(2);
/** The same rings once more, in a second layout: each is named by its number, so only the first writing of each counts. */
const AGAIN = [
  [whole(2), signed(10_000), whole(1), whole(1), whole(0)],
  [signed(15_500), whole(2), whole(1), whole(0), whole(1), whole(1)],
  [whole(1), signed(40_000), whole(1), whole(1), whole(2)],
  [whole(0), signed(30_001), signed(-40_000), whole(90_500)],
  [whole(1), signed(-50_001), signed(0), whole(0)],
  [whole(1), whole(0), whole(1), whole(3)],
].flat(2);

const SQUARE = [[-10, -5], [10, -5], [10, 5], [-10, 5]]; // prettier-ignore
const HOLE = { circle_mm: [1, 2, 3.125] };
/** The file that the bytes above stand for. */
function expected(name: string): Layout {
  const file = JSON.parse(form(name)) as Record<string, unknown>;
  const machine = file['machine'] as { lasers: { reach: unknown }[]; platform: { keepOuts: unknown } };
  machine.lasers[1]!.reach = SQUARE;
  machine.platform.keepOuts = [{ circle_mm: [-90, 90, 4] }];
  file['shapes'] = {
    block: { slabs: [{ to_mm: 10, rings: [SQUARE] }, { to_mm: 25.5, rings: [SQUARE, HOLE] }] },
    pin: { slabs: [{ to_mm: 40, rings: [[[0, 0], [3, 0], [6, 1], [8, 3]]] }] },
  }; // prettier-ignore
  file['parts'] = [
    { id: 'P01', shape: 'block', at_mm: [30.001, -40], turn_deg: 90.5 },
    { id: 'P02', shape: 'pin', at_mm: [-20, -40], turn_deg: 0, laser: 'L1', seams: 'none' },
  ];
  const read = readLayoutValue(file);
  if (!read.ok) throw new Error(read.fault.code);
  return read.value;
}

/** The text after "#" around the text and the numbers of a body. */
function byHand(letter: string, text: string, numbers: readonly number[]): string {
  const utf8 = Buffer.from(text, 'utf8');
  const body = deflateRawSync(Buffer.from([...whole(utf8.length), ...utf8, ...numbers])).toString(
    'base64url',
  );
  const unchecked = `${letter}1.${body.length.toString(36)}.${body}`;
  return unchecked + createHash('sha256').update(unchecked).digest('hex').slice(0, 8);
}

describe('a link of the prefix 1 that was written by hand', () => {
  test('brings the plate that its bytes stand for, and the view', () => {
    const text = `{"layouts":[${form('By hand')}],"view":{"camera":{"centreX_mm":1,"centreY_mm":-2,"pxPerMm":3},"height_mm":12.5}}`;
    const view = { height_mm: 12.5, camera: { centreX_mm: 1, centreY_mm: -2, pxPerMm: 3 } };
    expect(decodeLink(byHand('L', text, NUMBERS))).toEqual({
      ok: true,
      value: { layout: expected('By hand'), view },
    });
  });

  test('brings two plates side by side, the second one’s rings by their numbers', () => {
    const text = `{"layouts":[${form('One')},${form('Zwei: Fähre')}]}`;
    expect(decodeComparison(byHand('C', text, [...NUMBERS, ...AGAIN]))).toEqual({
      ok: true,
      value: { layouts: [expected('One'), expected('Zwei: Fähre')], view: {} },
    });
  });

  test('was altered where one number more or less stands in it', () => {
    const text = `{"layouts":[${form('By hand')}]}`;
    for (const numbers of [[...NUMBERS, 0], NUMBERS.slice(0, -1)])
      expect(decodeLink(byHand('L', text, numbers))).toMatchObject({ fault: { code: 'link-altered' } });
  });
});

describe('a link of the prefix 1 that the workbench wrote', () => {
  /** Its head, its text and the bytes of its numbers, taken apart by hand. */
  function takenApart(link: string) {
    const [, head, length, rest] = /^(L1)\.([0-9a-z]+)\.(.*)$/.exec(link) ?? [];
    const body = rest!.slice(0, Number.parseInt(length!, 36));
    const check = rest!.slice(body.length);
    const bytes = [...inflateRawSync(Buffer.from(body, 'base64url'), { dictionary: DICTIONARY_1 })];
    const [low, high] = [bytes[0]! - 128, bytes[1]!];
    const end = 2 + low + 128 * high;
    return {
      head,
      check,
      text: Buffer.from(bytes.slice(2, end)).toString('utf8'),
      numbers: bytes.slice(end),
    };
  }

  test('holds the text and the numbers that the description asks for, and the check', () => {
    const link = encodeLink(expected('By hand'));
    const { head, check, text, numbers } = takenApart(link);
    expect(head).toBe('L1');
    expect(check).toBe(createHash('sha256').update(link.slice(0, -8)).digest('hex').slice(0, 8));
    expect(text).toBe(`{"layouts":[${form('By hand')}]}`);
    expect(numbers).toEqual(NUMBERS);
  });
});

/**
 * Messages in German: their sentences, plurals and decimal signs, and what stands in them: words, numbers, faults. The
 * sentences are written by hand. What machines read stays English.
 */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { shownClock } from '../../src/build/scheduleFaults';
import { report } from '../../src/export/report';
import { checkMesh } from '../../src/import/mesh/check';
import { speakEnglish, speakGerman } from '../../src/language/index';
import { FIRST } from '../../src/language/de/first';
import { REST } from '../../src/language/de/rest';
import { messageAdvice, messageText } from '../../src/layout/messages';
import { readLayout } from '../../src/layout/read';
import type { Fault } from '../../src/layout/result';
import { plate, QUADRANTS, rect, standing } from '../support/plates';

const said = ({ code, params }: Fault): string => messageText(code, params);
const advised = ({ code, params }: Fault): string => messageAdvice(code, params);
const refusal = (text: string): Fault => {
  const read = readLayout(text);
  if (read.ok) throw new Error('the layout was accepted');
  return read.fault;
};
beforeEach(() => speakGerman({ ...FIRST, ...REST }));
afterEach(speakEnglish);

describe('a problem of the plate', () => {
  const off = plate([standing('A', 60, rect(398, 100, 401.5, 101))], QUADRANTS);
  const found = () => analyse(off).problems.find(({ code }) => code === 'part-off-platform')!;

  it('has a decimal comma and the digits that it has in English', () => {
    expect(said(found())).toBe('A steht mit 1,50 mm² über die Bauplattform hinaus.');
    speakEnglish();
    expect(said(found())).toBe('A stands off the platform by 1.50 mm².');
  });
  it('stays English in the report', () => {
    const analysis = analyse(off);
    const [problem] = report(analysis, analysis.layer(0)).problems.filter(
      ({ code }) => code === 'part-off-platform',
    );
    expect(problem!.text).toBe('A stands off the platform by 1.50 mm².');
    expect(said(found())).toContain('1,50');
  });
  it('goes over to another thread as it is', () => {
    expect(said(structuredClone(found()))).toBe(said(found()));
  });
});

describe('what stands in a message', () => {
  it('is said in German: the place, the value, what is accepted', () => {
    const fault = refusal('{"format":"evenplate-layout","version":3,"name":[1,2]}');
    expect(said(fault)).toBe('Der Wert von name ist eine Liste mit 2 Einträgen.');
    expect(advised(fault)).toBe(
      'Erwartet: ein Text aus höchstens 200 Zeichen, keines davon ein Richtungszeichen.',
    );
  });
  it('goes by the number one, too', () => {
    expect(said(refusal('{"format":"evenplate-layout","version":3,"name":[1]}'))).toBe(
      'Der Wert von name ist eine Liste mit 1 Eintrag.',
    );
  });
  it('may be a fault itself', () => {
    const inside = refusal('');
    expect(said({ code: 'library-entry-unreadable', params: { name: 'Fähre', detail: inside } })).toBe(
      '„Fähre“ lässt sich nicht öffnen: Die Datei ist kein JSON: sie ist leer.',
    );
  });
  it('may be a state of a revision', () => {
    const params = { former: 'A', state: { state: 'released' }, name: 'B' } as const;
    expect(said({ code: 'revision-begun', params })).toBe(
      'Revision A ist freigegeben und bleibt, wie sie ist: diese Änderung hat Revision B begonnen, einen davon abgeleiteten Entwurf.',
    );
    speakEnglish();
    expect(said({ code: 'revision-begun', params })).toContain('Revision A is released and stays as it is');
  });
  it('leaves names alone that look like numbers', () => {
    expect(said({ code: 'part-too-high', params: { part: '1.5', height: 200.5, limit: 200 } })).toBe(
      '1.5 ist 200,5 mm hoch.',
    );
  });
});

describe('counts', () => {
  const open = (count: number): Fault => ({ code: 'mesh-open-edges', params: { count, gap: 0.05 } });
  it('take the word for one and for several', () => {
    expect(said(open(1))).toBe('1 Kante ist offen.');
    expect(said(open(7))).toBe('7 Kanten sind offen.');
    expect(advised(open(7))).toContain('Lücken bis 0,05 mm');
  });
  it('stand in the findings of a mesh that was read', () => {
    // One triangle of 10 × 10: three open edges, and it is flat.
    const points = new Float64Array([0, 0, 0, 10.5, 0, 0, 0, 10, 0]);
    const { findings } = checkMesh({ points, triangles: new Uint32Array([0, 1, 2]) });
    expect(findings.map(said)).toEqual(
      expect.arrayContaining(['Das Netz misst 10,5 × 10 × 0 mm; es ist flach.', '3 Kanten sind offen.']),
    );
  });
});

it('a clock time has the day of the week', () => {
  expect(shownClock('2026-11-30T06:56')).toBe('Mo 2026-11-30 06:56');
});

/**
 * Published parameter sets. IN625 and Ti-6Al-4V: Zhang et al. 2019, J. Manuf. Process. 47; IN625 at 0.020 mm: Heigel et al.
 * 2020, doi 10.6028/jres.125.005; 316L: Kaess et al. 2023, Materials 16(6) 2321. The build-up rate h·v·t follows from the
 * engine as volume by time of a layer that is hatched without gaps or contours; the energy density is power by that rate.
 */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { incidenceAt, spotStretch } from '../../src/exposure/incidence';
import { machine, plate, rect, standing } from '../support/plates';

const SETS = [
  { name: 'IN625', power: 195, speed: 800, hatch: 0.1, layer: 0.02, density: 121.875, rate: 1.6 },
  { name: 'IN625', power: 195, speed: 800, hatch: 0.1, layer: 0.04, density: 60.9375, rate: 3.2 },
  { name: 'Ti-6Al-4V', power: 170, speed: 1250, hatch: 0.1, layer: 0.03, density: 45.333, rate: 3.75 },
  { name: '316L', power: 250, speed: 850, hatch: 0.1, layer: 0.03, density: 98.039, rate: 2.55 },
];

describe('parameter sets', () => {
  it.each(SETS)('$name at $layer mm builds $rate mm³/s with $density J/mm³', (set) => {
    const lasers = machine(400, ['L1']).lasers.map((laser) => ({ ...laser, power_W: set.power }));
    const process = {
      layer_mm: set.layer,
      hatch_mm: set.hatch,
      speed_mm_s: set.speed,
      vectorGap_ms: 0,
      contours: 0,
      pieceGap_s: 0,
    };
    const block = standing('block', 12, rect(100, 100, 130, 140));
    const analysis = analyse(plate([block], { strategy: 'wholeField' }, { machine: { lasers }, process }));
    const mm3 = analysis.build.scanVolume_cm3.L1 * 1000;
    const seconds = analysis.build.load_laserH * 3600;
    expect(mm3 / seconds).toBeCloseTo(set.rate, 9);
    const [{ power_W }] = analysis.layout.machine.lasers;
    expect((power_W * seconds) / mm3).toBeCloseTo(set.density, 3);
  });
});

describe('a slanting beam', () => {
  it.each([
    [10, 1.015427],
    [20, 1.064178],
  ])('at %d° makes the spot %d times as long: 1/cos θ [mathematics]', (degrees, stretch) => {
    const laser = { foot_mm: [30, -40] as const, workingHeight_mm: 500 };
    const away = 500 * Math.tan((degrees * Math.PI) / 180);
    expect(spotStretch(incidenceAt(laser, 30 + 0.6 * away, -40 + 0.8 * away))).toBeCloseTo(stretch, 6);
  });
});

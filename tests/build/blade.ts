/**
 * What the blade meets in sections that stand where their coordinates say, millimetres: the figures of a layer whose slabs
 * are those sections, and a part's own steepest rise over its slabs.
 */
import {
  contactOfSlabs,
  settingsOf,
  slabContact,
  type BladeContact,
  type BladeSettings,
} from '../../src/build/blade';
import type { PlacedPart } from '../../src/exposure/prepared';
import type { Region } from '../../src/geometry/types';
import type { Layout } from '../../src/layout/types';

/** As a machine is looked at whose blade lays powder on its way out. */
export const ONE_WAY: BladeSettings = { stroke_mm: 1, side_deg: 5, side_mm: 5, bothWays: false };

/** The blade's contact with sections of one layer. */
export const bladeContact = (
  sections: readonly Region[],
  towards_deg: number,
  settings = ONE_WAY,
): BladeContact =>
  contactOfSlabs(
    sections.map((section) => ({ from_mm: 0, to_mm: 1, section })),
    towards_deg,
    settings,
  );

/** The steepest rise of a part all of whose slabs are built. */
export const steepestOf = (part: PlacedPart, { machine: { recoater } }: Layout): number =>
  Math.max(
    ...part.sections.map((slab) => slabContact(slab, recoater.towards_deg, settingsOf(recoater)).rise_mm),
  );

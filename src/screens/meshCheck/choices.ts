/**
 * What the check page of a mesh file lets a person choose, and what of it goes to the worker and to the plate.
 * Millimetres, degrees.
 */
import type { CopyPlace, NewShape } from '../../commands/operations/shapes';
import type { MeshUnit } from '../../import/mesh/types';
import { SIZE_LIMIT_mm } from '../../layout/limits';
import type { Mm } from '../../units/types';
import { MM_PER_MESH_UNIT } from '../../import/mesh/units';
import type { MeshFileFound, MeshSettings } from '../../worker/meshMessages';
import type { MeshCutBody, MeshLook } from '../../worker/meshes';
import { UNTURNED, type Turns } from './turns';

/** As they are written on the page. */
export const UNIT_WORDS: Readonly<Record<MeshUnit, string>> = {
  millimeter: 'mm',
  inch: 'in',
  centimeter: 'cm',
  meter: 'm',
  micron: 'µm',
  foot: 'ft',
};
export const UNITS = Object.keys(UNIT_WORDS) as readonly MeshUnit[];

export interface BodyChoice {
  readonly use: boolean;
  readonly name: string;
  readonly copies: number;
}
export interface MeshChoices {
  /** null: as the file says; millimetres where it does not. */
  readonly unit: MeshUnit | null;
  readonly turns: Turns;
  readonly joinCracks: boolean;
  /** Sections are closed over gaps up to this. */
  readonly chainGap_mm: Mm;
  readonly seams: 'free' | 'none';
  /** Parts stand where the file places them, where it places several. */
  readonly keepPlaces: boolean;
  /** The body in the picture. */
  readonly shown: number;
  /** Bodies without an entry are as the file has them. */
  readonly bodies: Readonly<Record<number, BodyChoice>>;
}
/** @param keepPlaces on an empty plate; beside other parts there is room only where it is free */
export const firstChoices = (chainGap_mm: Mm, keepPlaces = true): MeshChoices => ({
  unit: null,
  turns: UNTURNED,
  joinCracks: false,
  chainGap_mm,
  seams: 'free',
  keepPlaces,
  shown: 0,
  bodies: {},
});

export function choiceFor({ bodies }: MeshChoices, file: MeshFileFound, place: number): BodyChoice {
  const { name, copies } = file.bodies[place]!;
  return bodies[place] ?? { use: true, name, copies };
}

export const withBody = (
  choices: MeshChoices,
  file: MeshFileFound,
  place: number,
  patch: Partial<BodyChoice>,
): MeshChoices => ({
  ...choices,
  bodies: { ...choices.bodies, [place]: { ...choiceFor(choices, file, place), ...patch } },
});

/** Factor on the lengths as they were read, for one unit taken as another. */
export const scaleFor = (file: MeshFileFound, unit: MeshUnit | null): number =>
  unit === null ? 1 : MM_PER_MESH_UNIT[unit] / MM_PER_MESH_UNIT[file.unit ?? 'millimeter'];

/** What decides how the bodies stand and what they are like. */
type Standing = Pick<MeshChoices, 'unit' | 'turns' | 'joinCracks' | 'chainGap_mm'>;

export const settingsFor = (file: MeshFileFound, choices: Standing): MeshSettings => ({
  placement: { ...choices.turns, scale: scaleFor(file, choices.unit) },
  joinCracks: choices.joinCracks,
  chainGap_mm: choices.chainGap_mm,
});

/** Places of the bodies that are to be cut. */
export const chosenPlaces = (file: MeshFileFound, choices: MeshChoices): number[] =>
  [...file.bodies.keys()].filter((place) => choiceFor(choices, file, place).use);

/** Those of them that a part can be as large as; the findings say of the others what is wrong. */
export const cuttablePlaces = (file: MeshFileFound, choices: MeshChoices, { bodies }: MeshLook): number[] =>
  chosenPlaces(file, choices).filter((place) => Math.max(...bodies[place]!.size_mm) <= SIZE_LIMIT_mm);

/**
 * The bodies that were cut, as shapes for the plate; what could not be cut is left out.
 * @param placesOf where the copies of a body stand
 */
export function newShapes(
  file: MeshFileFound,
  choices: MeshChoices,
  places: readonly number[],
  cut: readonly MeshCutBody[],
  placesOf: (place: number) => readonly CopyPlace[] = () => [],
): NewShape[] {
  return cut.flatMap((body, i) => {
    if (!body.ok) return [];
    const { name, copies } = choiceFor(choices, file, places[i]!);
    const at = placesOf(places[i]!);
    const where = at.length > 0 ? { places: at } : {};
    return [{ name, copies, shape: body.shape, seams: choices.seams, sound: true, ...where }];
  });
}

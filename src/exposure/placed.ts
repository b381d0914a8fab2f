/**
 * Islands: the connected parts of a section, each with the hatch area inside it. Turned islands belong to a shape and
 * answer by sweep profiles how much of them lies below a line; a placed island is one of them and an offset, so that
 * moving a part moves no outline until somebody looks. Millimetres.
 */
import { untagged } from '../geometry/halfPlane';
import { sweepProfile, type SweepProfile } from '../geometry/profile';
import { boxOf, turnAndMove } from '../geometry/region';
import type { Box, Region } from '../geometry/types';
import type { Mm, Mm2 } from '../units/types';

/** What turning and moving do not change: section area, hatch area, length of the true outline. */
export interface IslandMeasures {
  readonly area_mm2: Mm2;
  readonly hatch_mm2: Mm2;
  readonly outline_mm: Mm;
}
/** Section and hatch area swept by the same normal; hatch null where there is none. */
export interface IslandSweep {
  readonly nx: number;
  readonly ny: number;
  readonly section: SweepProfile;
  readonly hatch: SweepProfile | null;
}

/** A region moved; the same object where it is not. */
export const moved = (region: Region, x: Mm, y: Mm): Region =>
  x === 0 && y === 0 ? region : turnAndMove(region, 0, x, y);

const SWEEPS_KEPT = 4;

/** In the coordinates of the turned shape. */
export class Island {
  readonly box: Box;
  private readonly sweeps: IslandSweep[] = [];
  constructor(
    readonly section: Region,
    readonly hatch: Region,
    readonly measures: IslandMeasures,
  ) {
    this.box = boxOf(section);
  }

  /** The island turned; areas and lengths stay. */
  turned(turn: (region: Region) => Region): Island {
    const section = turn(this.section);
    return new Island(section, this.hatch === this.section ? section : turn(this.hatch), this.measures);
  }

  /** Remembered per normal. */
  sweep(nx: number, ny: number): IslandSweep {
    const known = this.sweeps.find((sweep) => sweep.nx === nx && sweep.ny === ny);
    if (known) return known;
    const section = sweepProfile(untagged(this.section), nx, ny);
    const own = this.hatch === this.section ? section : sweepProfile(untagged(this.hatch), nx, ny);
    const sweep = { nx, ny, section, hatch: this.hatch.length > 0 ? own : null };
    if (this.sweeps.length >= SWEEPS_KEPT) this.sweeps.shift();
    this.sweeps.push(sweep);
    return sweep;
  }
}

const boxAt = (box: Box, x: Mm, y: Mm): Box => ({
  minX: box.minX + x,
  minY: box.minY + y,
  maxX: box.maxX + x,
  maxY: box.maxY + y,
});

/** An island where its part stands, in platform coordinates; outlines are moved on first use. */
export class PlacedIsland {
  readonly box: Box;
  private sectionMade: Region | null = null;
  private hatchMade: Region | null = null;
  constructor(
    readonly local: Island,
    readonly x: Mm,
    readonly y: Mm,
  ) {
    this.box = boxAt(local.box, x, y);
  }
  get measures(): IslandMeasures {
    return this.local.measures;
  }
  get section(): Region {
    return (this.sectionMade ??= moved(this.local.section, this.x, this.y));
  }
  get hatch(): Region {
    if (this.local.hatch === this.local.section) return this.section;
    return (this.hatchMade ??= moved(this.local.hatch, this.x, this.y));
  }
}

/** What a reader further on worked out from an object, kept with it: collected with it, and cheaper than a WeakMap. */
export interface Keeps {
  kept: unknown;
}

/** A slab of a turned shape, as `PlacedSlab` needs it. */
interface LocalSlab {
  readonly from_mm: Mm;
  readonly to_mm: Mm;
  readonly box: Box;
  readonly islands: readonly Island[];
}

/** A slab where its part stands; the slabs of a high mesh are made ready only where somebody looks. */
export class PlacedSlab implements Keeps {
  kept: unknown = null;
  private islandsMade: readonly PlacedIsland[] | null = null;
  private sectionMade: Region | null = null;
  constructor(
    private readonly local: LocalSlab,
    private readonly x: Mm,
    private readonly y: Mm,
  ) {}
  get from_mm(): Mm {
    return this.local.from_mm;
  }
  get to_mm(): Mm {
    return this.local.to_mm;
  }
  get box(): Box {
    return boxAt(this.local.box, this.x, this.y);
  }
  get islands(): readonly PlacedIsland[] {
    return (this.islandsMade ??= this.local.islands.map(
      (island) => new PlacedIsland(island, this.x, this.y),
    ));
  }
  get area_mm2(): Mm2 {
    let sum = 0;
    for (const island of this.local.islands) sum += island.measures.area_mm2;
    return sum;
  }
  get section(): Region {
    return (this.sectionMade ??= this.islands.flatMap((island) => [...island.section]));
  }
}

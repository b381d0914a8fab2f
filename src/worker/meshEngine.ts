/**
 * Reads, checks, draws and cuts the bodies of one mesh file, the newest question first. Cutting goes in slices of a few
 * milliseconds with pauses between them, so that a newer question or "stop" is heard; reading and checking one body are
 * single steps. Runs in a worker or, where there is none, beside the page's own work. Millimetres.
 */
import { footprintOf } from '../exposure/prepared';
import { checkMesh, fileFindings, orient, readMesh, sectionSteps, sizeOf, joinCracks } from '../import/mesh';
import { meshLayers } from '../import/mesh/layers';
import { middle } from '../import/mesh/orient';
import type { Mesh, MeshCheck, MeshFile, MeshSections } from '../import/mesh/types';
import type { Shape } from '../layout/types';
import type { Mm } from '../units/types';
import type {
  MeshAnswer,
  MeshBodyLook,
  MeshCutOutcome,
  MeshDoing,
  MeshFileFound,
  MeshQuestion,
  MeshSettings,
} from './meshMessages';
import { meshViews } from './meshPicture';
import { packShape } from './packShape';

/** Milliseconds of work between two pauses. */
const SLICE_MS = 12;
/** Milliseconds between two words about how far it is. */
const TELL_MS = 50;
/** Pixels of a picture's side. */
const PICTURE_PX = 400;

export interface MeshEnginePorts {
  tell(answer: MeshAnswer, handOver: ArrayBuffer[]): void;
  /** Lets waiting messages in. */
  pause(): Promise<void>;
  now(): number;
}
type Asked = Exclude<MeshQuestion, { kind: 'stop' }>;
type Cut = Extract<MeshQuestion, { kind: 'cut' }>;

/** A body scaled and, where asked, joined; and what it is like. Kept until scale or joining change. */
interface Made {
  readonly key: string;
  readonly mesh: Mesh;
  readonly check: MeshCheck;
  readonly crack_mm: Mm | null;
}

/** Thrown inside a job that nobody waits for any more. */
class Dropped extends Error {}

export class MeshEngine {
  private file: MeshFile | null = null;
  private readonly made = new Map<number, Made>();
  private newest: Asked | null = null;
  private stopped = false;
  private busy = false;
  private toldAt = -Infinity;
  constructor(private readonly ports: MeshEnginePorts) {}

  /** Takes a question. Resolved when nothing is left to do. */
  async ask(question: MeshQuestion): Promise<void> {
    this.stopped = question.kind === 'stop';
    this.newest = question.kind === 'stop' ? null : question;
    if (this.busy) return;
    this.busy = true;
    while (this.newest) await this.answer(this.newest);
    this.busy = false;
  }

  private async answer(question: Asked): Promise<void> {
    this.newest = null;
    this.toldAt = -Infinity;
    try {
      if (question.kind === 'read') this.read(question.id, question.name, question.bytes);
      else if (question.kind === 'look') await this.look(question);
      else await this.cut(question);
    } catch (error) {
      if (error instanceof Dropped) return;
      const detail = error instanceof Error ? error.message : String(error);
      this.ports.tell({ kind: 'failed', id: question.id, detail }, []);
    }
  }

  /** Says how far it is, now and then. */
  private progress(id: number, at: MeshDoing): void {
    const now = this.ports.now();
    if (now - this.toldAt < TELL_MS) return;
    this.toldAt = now;
    this.ports.tell({ kind: 'progress', id, at }, []);
  }

  /** Lets messages in; throws where the job at work was dropped by one of them. */
  private async pause(): Promise<void> {
    await this.ports.pause();
    if (this.newest || this.stopped) throw new Dropped();
  }

  private read(id: number, name: string, bytes: Uint8Array): void {
    const read = readMesh(bytes, name, (share) => this.progress(id, { doing: 'reading', share }));
    if (!read.ok) return this.ports.tell({ kind: 'fault', id, fault: read.fault }, []);
    this.file = read.value;
    this.made.clear();
    this.ports.tell({ kind: 'read', id, file: foundIn(read.value) }, []);
  }

  private opened(): MeshFile {
    if (!this.file) throw new Error('MeshEngine: expected a file to have been read');
    return this.file;
  }

  private make(place: number, settings: MeshSettings): Made {
    const { placement, joinCracks: wanted, chainGap_mm } = settings;
    const scale = placement.scale ?? 1;
    const key = `${scale} ${wanted} ${chainGap_mm}`;
    const known = this.made.get(place);
    if (known?.key === key) return known;
    const plain = orient(this.opened().bodies[place]!.mesh, { scale });
    const first = checkMesh(plain, chainGap_mm);
    const joins = wanted && first.crack_mm !== null;
    const mesh = joins ? joinCracks(plain, first.crack_mm) : plain;
    const check = joins ? checkMesh(mesh, chainGap_mm) : first;
    const made: Made = { key, mesh, check, crack_mm: first.crack_mm };
    this.made.set(place, made);
    return made;
  }

  private async look({ id, settings, shown }: Extract<MeshQuestion, { kind: 'look' }>): Promise<void> {
    const { bodies } = this.opened();
    const { scale: _made, ...turns } = settings.placement;
    const looks: MeshBodyLook[] = [];
    for (const [place, body] of bodies.entries()) {
      this.progress(id, { doing: 'checking', share: place / bodies.length, body: body.name });
      await this.pause();
      const { mesh, check, crack_mm } = this.make(place, settings);
      looks.push({ check, crack_mm, size_mm: sizeOf(orient(mesh, turns)) });
    }
    const views = meshViews(orient(this.make(shown, settings).mesh, turns), PICTURE_PX);
    const handOver = [views.front, views.above, views.oblique].map(({ pixels }) => pixels.buffer);
    this.ports.tell({ kind: 'looked', id, bodies: looks, shown, views }, handOver);
  }

  private async cut(question: Cut): Promise<void> {
    const outcomes: MeshCutOutcome[] = [];
    for (const place of question.bodies) outcomes.push(await this.cutBody(question, place));
    const handOver = outcomes.flatMap((outcome) => (outcome.ok ? [outcome.packed.buffer] : []));
    this.ports.tell({ kind: 'cut', id: question.id, bodies: outcomes }, handOver);
  }

  private async cutBody(question: Cut, place: number): Promise<MeshCutOutcome> {
    const { id, settings, layer_mm } = question;
    const { name: body } = this.opened().bodies[place]!;
    this.progress(id, { doing: 'checking', share: 0, body });
    await this.pause();
    const { mesh, check } = this.make(place, settings);
    const { scale: _made, ...turns } = settings.placement;
    const turned = orient(mesh, turns);
    const layers = Math.max(1, meshLayers(sizeOf(turned)[2], layer_mm));
    const { chainGap_mm } = settings;
    const result = await this.run(sectionSteps(turned, { layer_mm, chainGap_mm }), (share) =>
      this.progress(id, { doing: 'cutting', share, body, layer: Math.round(share * layers), layers }),
    );
    return result.ok ? outcomeOf(result.value, check) : result;
  }

  private async run<T>(steps: Generator<number, T>, tell: (share: number) => void): Promise<T> {
    for (let began = this.ports.now(); ;) {
      const step = steps.next();
      if (step.done) return step.value;
      if (this.ports.now() - began < SLICE_MS) continue;
      tell(step.value);
      await this.pause();
      began = this.ports.now();
    }
  }
}

const foundIn = (file: MeshFile): MeshFileFound => ({
  name: file.name,
  kind: file.kind,
  unit: file.unit,
  bodies: file.bodies.map(({ name, copies, mesh, items = [] }) => ({
    name,
    copies,
    items,
    middle_mm: [middle(mesh, 0), middle(mesh, 1)],
    triangles: mesh.triangles.length / 3,
  })),
  findings: fileFindings(file),
});

function outcomeOf({ slabs, ...rest }: MeshSections, { volume_mm3 }: MeshCheck): MeshCutOutcome {
  const cut = { ...rest, slabCount: slabs.length, meshVolume_mm3: volume_mm3 };
  const shape: Shape = { slabs };
  return { ok: true, cut, packed: packShape(shape), footprint: footprintOf(shape) };
}

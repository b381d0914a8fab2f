/**
 * `npm run bench`: the engine beside general-purpose libraries on the same seeded plate, in one run on one machine.
 * Only the ratios carry over to another machine. Leaves with 1 where results differ or a ratio falls short.
 */
import { cpus, loadavg } from 'node:os';
import { allocationBench } from './allocationBench';
import { layerBench } from './layerBench';
import { table, times } from './table';

/** Load average at which figures are no longer worth quoting: more is waiting than there are processors. */
const busy = loadavg()[0]! > cpus().length;

const layer = await layerBench();
const allocations = await allocationBench();
const sameOptima = allocations.every(({ agreed }) => agreed);
const ratios = [...layer.ratios, ...allocations.flatMap(({ ratios: own }) => own)];

console.log(`Node ${process.version}, ${cpus()[0]?.model ?? 'unknown processor'}\n`);
console.log(`${[layer, ...allocations].map(({ text }) => text).join('\n\n')}\n`);
console.log(
  table(
    ['times faster than the library', 'measured', 'wanted'],
    ratios.map(({ what, ratio, wanted }) => [what, times(ratio), wanted === null ? '' : times(wanted)]),
  ),
);
console.log(
  `areas agree to 1e-6: ${layer.agreed ? 'yes' : 'NO'}; optimum to 1e-6 and cuts agree: ${sameOptima ? 'yes' : 'NO'}`,
);
if (busy)
  console.log(`the machine is busy (load ${loadavg()[0]!.toFixed(1)}): run it again when it is quiet`);
const good =
  layer.agreed && sameOptima && ratios.every(({ ratio, wanted }) => wanted === null || ratio >= wanted);
process.exit(good ? 0 : 1);

/**
 * Gives every fragment its lasers (seconds each), when it is settled which parts are whole and how much each laser works
 * in all. Few pieces: a fragment stays whole wherever that costs nothing, lasers that already expose something of the
 * part come first, and a fragment that has to be divided gives as much as it can to one laser before the next. That
 * divides at most as many times as sets of lasers run full: lasers − 1.
 */
import { bestDive } from './cuts';
import { fill } from './flow';
import { byMaskOf, type Fragment, type Group, type Item } from './groups';
import { lowestOf } from './sets';
import { mostOn, slackOf, takeSome, type Slack } from './slack';

/** Called for every share found; laser in the group's numbering. */
export type Give = (fragment: Fragment, laser: number, load_s: number) => void;

const itemOf = ({ mask, load_s }: Fragment): Item => ({
  allowed: mask,
  total_s: load_s,
  masks: [mask],
  loads_s: [load_s],
});

/** The fragments still to be divided, the ones of undecided cost first, each by falling load. */
export function divisible(group: Group, laserOf: Int32Array): Fragment[] {
  const cut = group.decisions.flatMap((decision, i) => (laserOf[i]! < 0 ? decision.fragments : []));
  const falling = (list: readonly Fragment[]): Fragment[] => [...list].sort((a, b) => b.load_s - a.load_s);
  return [...falling(group.free), ...falling(cut)];
}

/** Divides one fragment: as much as possible to one laser, then to the next; lasers of `prefer` win ties. */
function divide(slack: Slack, fragment: Fragment, prefer: number, give: Give): void {
  let left_s = fragment.load_s;
  for (let among = fragment.mask; among !== 0;) {
    let best = -1;
    let most_s = -1;
    for (let rest = among; rest !== 0; rest &= rest - 1) {
      const k = lowestOf(rest);
      const amount_s = mostOn(slack, fragment.mask, left_s, k);
      const ahead = (prefer >>> k) & 1 && !((prefer >>> best) & 1);
      if (amount_s > most_s + slack.tiny_s || (best >= 0 && ahead && amount_s >= most_s - slack.tiny_s))
        [best, most_s] = [k, amount_s];
    }
    among &= ~(1 << best);
    const amount_s = among === 0 || most_s >= left_s - slack.tiny_s ? left_s : most_s;
    if (amount_s <= slack.tiny_s && among !== 0) continue;
    takeSome(slack, fragment.mask, amount_s, best);
    give(fragment, best, amount_s);
    left_s -= amount_s;
    if (left_s <= 0) return;
  }
}

/**
 * Divides the fragments so that laser k works `room_s[k]` on them in all. `held`: part → lasers of the group that expose
 * something of it already (bits).
 */
export function divideAll(
  sets: Int32Array,
  room_s: readonly number[],
  fragments: readonly Fragment[],
  held: ReadonlyMap<number, number>,
  tiny_s: number,
  give: Give,
): void {
  const start = slackOf(sets, room_s, byMaskOf(fragments), tiny_s);
  const items = fragments.map(itemOf);
  const prefer = Int32Array.from(fragments, ({ part }) => held.get(part) ?? 0);
  const { laserOf, slack } = bestDive(start, items, [], prefer);
  const used = new Map(held);
  fragments.forEach((fragment, i) => {
    const k = laserOf[i]!;
    if (k < 0) return;
    give(fragment, k, fragment.load_s);
    used.set(fragment.part, (used.get(fragment.part) ?? 0) | (1 << k));
  });
  fragments.forEach((fragment, i) => {
    if (laserOf[i]! < 0) divide(slack, fragment, used.get(fragment.part) ?? 0, give);
  });
}

/** The same where the sets of lasers are too many to watch: by max-flow, each set's fragments filled in order. */
export function divideByFlow(
  room_s: readonly number[],
  fragments: readonly Fragment[],
  scale_s: number,
  give: Give,
): void {
  const filling = fill(byMaskOf(fragments), room_s, scale_s);
  filling.masks.forEach((mask, j) => {
    const amounts = room_s.map((_, k) => filling.flow_s[j * room_s.length + k]!);
    let k = 0;
    for (const fragment of fragments.filter((f) => f.mask === mask)) {
      let left_s = fragment.load_s;
      while (left_s > 0) {
        while (k < amounts.length - 1 && !(amounts[k]! > scale_s * 1e-12)) k++;
        const last = !amounts.some((amount, other) => other > k && amount > scale_s * 1e-12);
        const amount_s = last ? left_s : Math.min(left_s, amounts[k]!);
        const to = (mask >>> k) & 1 ? k : lowestOf(mask);
        give(fragment, to, amount_s);
        amounts[k]! -= amount_s;
        left_s -= amount_s;
      }
    }
  });
}

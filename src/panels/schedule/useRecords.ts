/** The recorded builds as a panel shows them; every change is kept at once. */
import { useEffect, useState } from 'react';
import type { Fault, Result } from '../../layout/result';
import { changeRecords, readRecords, type NamedRecord } from './records';

type List = readonly NamedRecord[];
export interface Records {
  readonly list: List;
  /** Why they are not kept; null where they are. */
  readonly fault: Fault | null;
  add(record: NamedRecord): void;
  /** Takes one such record out. */
  remove(record: NamedRecord): void;
}

const alike = (a: NamedRecord, b: NamedRecord): boolean =>
  a.name === b.name &&
  a.planned_h === b.planned_h &&
  a.real_h === b.real_h &&
  a.site?.machine === b.site?.machine &&
  a.site?.process === b.site?.process;

/** The list without the first record that is alike; as it is where there is none. */
function without(list: List, record: NamedRecord): List {
  const index = list.findIndex((other) => alike(other, record));
  return index < 0 ? list : list.toSpliced(index, 1);
}

export function useRecords(): Records {
  const [list, setList] = useState<List>([]);
  const [fault, setFault] = useState<Fault | null>(null);
  const take = (kept: Result<List>): void => {
    if (kept.ok) setList(kept.value);
    setFault(kept.ok ? null : kept.fault);
  };
  useEffect(() => {
    let gone = false;
    void readRecords().then((kept) => {
      if (!gone) take(kept);
    });
    return () => {
      gone = true;
    };
  }, []);
  const change = (recipe: (kept: List) => List): void => {
    setList(recipe);
    void changeRecords(recipe).then(take);
  };
  return {
    list,
    fault,
    add: (record) => change((kept) => [...kept, record]),
    remove: (record) => change((kept) => without(kept, record)),
  };
}

/**
 * How service events are called, what goes beside every service event, and the standards that are pointed to, never replaced: ISO/ASTM 52938-1 (machine
 * safety), ISO/ASTM 52931 (metal powders), IEC 60825-1 (lasers), NFPA 660 and local combustible-dust codes.
 */
import type { Text } from '../language/index';
import type { EventKind } from './events';

export const EVENT_NAMES: Readonly<Record<EventKind, Text>> = {
  overflowFull: 'Overflow full',
  feedEmpty: 'Feed empty',
  residueDue: 'Residue due',
  end: 'End of the build',
};

export const CAUTIONS: Readonly<Record<EventKind, Text>> = {
  overflowFull: 'Fine metal powder is handled. Inert gas displaces oxygen; platform and parts stay hot.',
  feedEmpty: 'Fine metal powder is handled. Inert gas displaces oxygen; platform and parts stay hot.',
  residueDue:
    'Condensate and filter residue of reactive alloys can ignite in air hours later. Inert gas displaces oxygen.',
  end: 'Inert gas displaces oxygen; platform and parts stay hot.',
};

export const WHO_DECIDES: Text =
  'A plan and an estimate. The machine maker’s instructions, site rules, local law and trained people decide. A service event in unattended hours is a fault to resolve, never to skip.';
export const STANDARDS: Text =
  'See ISO/ASTM 52938-1 (machine safety), ISO/ASTM 52931 (metal powders), IEC 60825-1 (lasers), NFPA 660 and local combustible-dust codes.';

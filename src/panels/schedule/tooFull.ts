/** What stands beside a fill level that its store cannot hold. Litres. */
import { t } from '../../language/index';
import { formatField } from '../../units/format';

/** Undefined where it fits, or the machine's stores are not stated. */
export const tooFull = (level_l: number, holds_l: number | undefined): string | undefined =>
  holds_l !== undefined && level_l > holds_l
    ? t('more than it holds ({holds} l)', { holds: formatField(holds_l) })
    : undefined;

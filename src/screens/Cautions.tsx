/**
 * The cautions that go with every plan. The standards named here are pointed to, never replaced.
 */
export function Cautions() {
  return (
    <section className="cautions">
      <h3>{t('What this is not')}</h3>
      <ul>
        <li>
          {t(
            'A plan and an estimate. The machine maker’s instructions, site rules, local law and trained people decide.',
          )}
        </li>
        <li>
          {t(
            'All published timing found is for one laser: figures for several lasers are unvalidated by measurement. Plumes are geometry only, not a flow simulation; no published plume width was found, so it is a setting.',
          )}
        </li>
        <li>
          {t(
            'Condensate and filter residue of reactive alloys can ignite in air hours later; inert gas displaces oxygen; platform and parts stay hot. A service event in unattended hours is a fault to resolve, never to skip.',
          )}
        </li>
        <li>
          {t(
            'See ISO/ASTM 52938-1 (machine safety), ISO/ASTM 52931 (metal powders), IEC 60825-1 (lasers), NFPA 660 and local combustible-dust codes.',
          )}
        </li>
      </ul>
    </section>
  );
}
import { t } from '../language/index';

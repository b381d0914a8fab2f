/**
 * What Evenplate is, what its figures rest on, and the cautions.
 */
import { t } from '../language/index';
import { Cautions } from './Cautions';
import { Sheet } from './Sheet';

export default function AboutDialog({ onClose }: { onClose(): void }) {
  return (
    <Sheet title={t('About Evenplate')} wide reading onClose={onClose}>
      <p>
        {t(
          'Evenplate divides the platform of a multi-laser metal powder bed machine among its lasers and shows what each division costs in time, seams and hours. Everything is computed in this browser; nothing leaves it.',
        )}
      </p>
      <p>
        {t(
          'Areas come from sections at the height shown. Loads follow one time model: area over hatch distance and speed, a gap per vector, contours, a gap per piece. The best possible time is proven, not guessed.',
        )}
      </p>
      <Cautions />
    </Sheet>
  );
}

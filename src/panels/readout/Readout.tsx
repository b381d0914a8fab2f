/**
 * What each laser does in the layer shown and what the build comes to. The same analysis that the plan draws, in the
 * same frame. The book-keeping line stays in view whatever is scrolled.
 */
import { formatNumber } from '../../units/format';
import { useBench } from '../../canvas/bench';
import { useLayer } from '../useLayer';
import { BookKeeping } from './BookKeeping';
import { BuildList, PlumeList } from './BuildList';
import { LaserRows } from './LaserRows';
import { LargeFigures, SmallFigures } from './LayerFiguresList';
import './readout.css';

export function Readout() {
  const { analysis, figures, layer } = useLayer();
  const height_mm = useBench((state) => state.view.height_mm);
  return (
    <section className="view readout" aria-label="Readout">
      <div className="view-head">
        <h2>LASERS</h2>
        <span className="view-note">
          layer {layer} of {analysis.build.layers}, z {formatNumber(height_mm, 5, 2)} mm
        </span>
      </div>
      <div className="readout-body" tabIndex={-1}>
        <LaserRows />
        <LargeFigures figures={figures} />
        <SmallFigures figures={figures} />
        <BuildList analysis={analysis} />
        <PlumeList analysis={analysis} figures={figures} />
      </div>
      <BookKeeping figures={figures} />
    </section>
  );
}

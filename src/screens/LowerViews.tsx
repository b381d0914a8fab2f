/**
 * Elevation and time per layer, which share z, with the height of the cut as slider, number and list.
 */
import { Elevation } from '../canvas/Elevation';
import { TimePerLayer } from '../canvas/TimePerLayer';
import { HeightNews, WorstHeight } from '../panels/views/HeightNews';
import { HeightBar } from '../panels/views/HeightBar';

export function LowerViews() {
  return (
    <>
      <section className="view elevation" aria-label="Elevation">
        <div className="view-head height-bar">
          <h2>ELEVATION</h2>
          <HeightBar />
        </div>
        <div className="view-body">
          <Elevation />
        </div>
      </section>
      <section className="view times" aria-label="Time per layer">
        <div className="view-head">
          <h2>TIME PER LAYER</h2>
          <HeightNews />
        </div>
        <div className="view-body">
          <TimePerLayer />
        </div>
        <WorstHeight />
      </section>
    </>
  );
}

/**
 * What the pointer does on the plan, one picture and one key each, and the height that newly drawn parts get.
 */
import { type Command } from '../../commands/types';
import { labelOf } from '../../commands/labels';
import { t } from '../../language/index';
import { useBench, useWorkbench } from '../../canvas/bench';
import { COMMANDS } from '../../commands/index';
import type { Tool } from '../../store/types';
import { formatField } from '../../units/format';
import { parseLength } from '../../units/parse';
import { Segmented } from '../controls/Segmented';
import { TypedField } from '../controls/TypedField';
import { StepShown } from '../division/StepShown';
import { CommandButton } from '../header/CommandButton';
import { TOOL_ICONS } from '../header/icons';
import { keyText } from '../useCommands';

const PREFIX = 'tool-';
const TOOLS = COMMANDS.filter(({ id }) => id.startsWith(PREFIX));
const option = (tool: Command) => {
  const { id, keys } = tool;
  const label = labelOf(tool);
  const value = id.slice(PREFIX.length) as Tool;
  const key = keyText(keys[0] ?? '');
  return {
    value,
    label,
    title: `${label} (${key})`,
    content: (
      <>
        {TOOL_ICONS[value]}
        <span className="key">{key.replace(`${t('Shift ¦ key')}+`, '⇧')}</span>
      </>
    ),
  };
};
const DRAWS: readonly Tool[] = ['rectangle', 'disc', 'ring', 'polygon'];

function DrawHeight() {
  const bench = useWorkbench();
  const value = useBench((state) => state.view.drawHeight_mm);
  return (
    <TypedField
      label={t('height')}
      what={t('height')}
      unit="mm"
      parse={parseLength}
      format={formatField}
      min={0.001}
      max={10_000}
      step={1}
      value={value}
      testId="draw-height"
      onCommit={(drawHeight_mm) => bench.setView({ drawHeight_mm })}
    />
  );
}

function SnapChoice() {
  const bench = useWorkbench();
  const on = useBench((state) => state.view.snapping);
  const grid_mm = useBench((state) => state.view.grid_mm);
  return (
    <div className="row snap-choice">
      <label
        className="switch"
        title={t('Snap to edges, middles, zone lines and gaps (Shift+G); Alt or Ctrl suspends')}
      >
        <input
          type="checkbox"
          checked={on}
          data-testid="snapping"
          onChange={(event) => bench.setView({ snapping: event.target.checked })}
        />
        {t('snap')}
      </label>
      {on && (
        <TypedField
          label={t('grid')}
          what={t('grid')}
          unit="mm"
          hint={t('0: no grid. It holds the origin of the part where nothing else does.')}
          parse={parseLength}
          format={formatField}
          min={0}
          max={1000}
          step={1}
          value={grid_mm}
          testId="grid"
          onCommit={(next) => bench.setView({ grid_mm: next })}
        />
      )}
    </div>
  );
}

function ToolBar() {
  const bench = useWorkbench();
  const tool = useBench((state) => state.view.tool);
  return (
    <>
      <Segmented
        label={t('Tool')}
        value={tool}
        options={TOOLS.map(option)}
        onChoose={(next) => bench.setView({ tool: next, measured: null })}
      />
      {(tool === 'select' || tool === 'measure') && <SnapChoice />}
      {DRAWS.includes(tool) && <DrawHeight />}
    </>
  );
}

function ZoomButtons() {
  useBench((state) => state.view.camera);
  useBench((state) => state.view.fitted);
  useBench((state) => state.view.everything);
  return (
    <div className="row zoom-buttons">
      <CommandButton id="zoom-out">−</CommandButton>
      <CommandButton id="zoom-in">+</CommandButton>
      <CommandButton id="zoom-fit">{t('Fit')}</CommandButton>
    </div>
  );
}

/** Tools, height of what is drawn, which zones are shown, zoom: the head of the plan. */
export function PlanHead() {
  return (
    <>
      <ToolBar />
      <span className="view-gap" />
      <StepShown />
      <ZoomButtons />
    </>
  );
}

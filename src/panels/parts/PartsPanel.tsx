/**
 * Everything about parts: the table, the selected part's numbers, the shapes.
 */
import { PartInspector } from './PartInspector';
import { PartTable } from './PartTable';
import { ShapeList } from './ShapeList';
import './parts.css';

export function PartsPanel() {
  return (
    <div className="parts-panel">
      <PartTable />
      <div className="parts-lower">
        <PartInspector />
        <ShapeList />
      </div>
    </div>
  );
}

/** What kind of file a name promises. */
export type FileKind = 'layout' | 'outlines' | 'mesh';

/** By the end of the name: .json is a layout, .svg and .dxf are outlines, .stl and .3mf meshes; null otherwise. */
export function kindOf(name: string): FileKind | null {
  const ending = name.slice(name.lastIndexOf('.') + 1).toLowerCase();
  if (ending === 'json') return 'layout';
  if (ending === 'svg' || ending === 'dxf') return 'outlines';
  return ending === 'stl' || ending === '3mf' ? 'mesh' : null;
}

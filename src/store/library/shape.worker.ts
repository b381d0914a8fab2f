/** Writes a large shape out beside the page: its sections packed in, its text and checksum out. */
import { unpackShape } from '../../worker/packShape';
import { contentChecksum, contentText } from './content';
import type { Written } from './beside';

const page = self as unknown as {
  postMessage(written: Written): void;
  onmessage: ((event: MessageEvent<Float64Array>) => void) | null;
};

page.onmessage = ({ data }) => {
  const held = { kind: 'shape', content: unpackShape(data) } as const;
  page.postMessage({ text: contentText(held), checksum: contentChecksum(held) });
};

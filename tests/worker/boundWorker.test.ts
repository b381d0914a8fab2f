/** Every thread of the page is one that the page's content security policy binds; read from the sources themselves. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const MAKES = /\bnew Worker\(new URL\(/;
const BOUND = /import \{ Worker \} from '[./]*(worker\/)?boundWorker';/;
const makers = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.tsx?$/.test(name) && !name.endsWith('boundWorker.ts'))
  .map((name) => [name, readFileSync(`src/${name}`, 'utf8')] as const)
  .filter(([, text]) => MAKES.test(text));

test('threads are made in several places', () => expect(makers.length).toBeGreaterThan(5));
test.each(makers)('%s makes a bound one', (_, text) => expect(text).toMatch(BOUND));

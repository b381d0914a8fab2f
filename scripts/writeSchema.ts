/**
 * Writes shared/layout.schema.json from the schema in src/layout, so that editors and other programs can check a
 * layout file. What concerns several values at once (unknown names, repeated ids, ascending heights) is not in it.
 */
import { toJsonSchema } from '@valibot/to-json-schema';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { SCHEMAS } from '../src/layout/schema';
import * as v from 'valibot';
import { anyRing, circle, outline, point } from '../src/layout/schemaValues';

export const SCHEMA_FILE = new URL('../shared/layout.schema.json', import.meta.url);

/** The schema's text as it belongs in the file. */
export function schemaText(): string {
  const schema = toJsonSchema(v.union([...SCHEMAS]), {
    target: 'draft-2020-12',
    typeMode: 'input',
    ignoreActions: ['transform', 'check'],
    definitions: { ring: anyRing, outline, circle, point },
  });
  const titled = {
    $schema: schema.$schema,
    title: 'Evenplate layout, versions 1 to 3',
    description:
      'Millimetres, seconds, watts, degrees counter-clockwise from +x; origin at the centre of the platform, +y to the back.',
    ...schema,
  };
  return `${JSON.stringify(titled, null, 2)}\n`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(SCHEMA_FILE, schemaText());

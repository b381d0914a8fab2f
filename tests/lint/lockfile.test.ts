/**
 * package-lock.json pins versions and hashes and names no server, so that `npm ci` works with any registry.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const text = readFileSync(new URL('../../package-lock.json', import.meta.url), 'utf8');
interface Entry {
  readonly version?: string;
  readonly integrity?: string;
  readonly resolved?: string;
}
const { packages } = JSON.parse(text) as { packages: Record<string, Entry> };
const installed = Object.entries(packages).filter(([path]) => path !== '');

describe('package-lock.json', () => {
  it('pins every package by version and hash', () => {
    expect(installed.length).toBeGreaterThan(50);
    expect(installed.filter(([, entry]) => !entry.version || !entry.integrity).map(([path]) => path)).toEqual(
      [],
    );
  });
  it('names no registry', () => {
    expect(installed.filter(([, entry]) => entry.resolved !== undefined).map(([path]) => path)).toEqual([]);
    expect(text).not.toMatch(/"resolved"/);
  });
});

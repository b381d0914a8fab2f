/** The demo plate: ferry spares. */
import { t } from '../../language/index';
import { demoLayout } from '../../layout/demo';
import { always } from '../make';
import type { Command } from '../types';
import { openLayout } from './openLayout';

export const openDemo: Command = {
  id: 'open-demo',
  label: 'Open the demo plate',
  group: 'file',
  keys: [],
  when: always,
  run: ({ bench }) => openLayout(bench, t('Open the demo plate'), demoLayout()),
};

/**
 * Every message a user reads, under a stable code, in one table. Its entries stand by subject in messages/.
 */
import { t, withDecimalSign, type Values } from '../language/index';
import { EDIT_MESSAGES } from './messages/editMessages';
import { EXPORT_MESSAGES } from './messages/exportMessages';
import { FILE_MESSAGES } from './messages/fileMessages';
import { LIBRARY_MESSAGES } from './messages/libraryMessages';
import { LINK_MESSAGES } from './messages/linkMessages';
import { MESH_MESSAGES } from './messages/meshMessages';
import type { Message } from './messages/message';
import { OUTLINE_MESSAGES } from './messages/outlineMessages';
import { PART_MESSAGES } from './messages/partMessages';
import { PLATE_MESSAGES } from './messages/plateMessages';
import { REVISION_MESSAGES } from './messages/revisionMessages';
import { SCHEDULE_MESSAGES } from './messages/scheduleMessages';
import { SOUND_MESSAGES } from './messages/soundMessages';
import { TABLE_MESSAGES } from './messages/tableMessages';
import type { Param, Params } from './result';
import { STATE_NAMES } from './revisionNames';

export type { Message };
export const MESSAGES = {
  ...PLATE_MESSAGES,
  ...FILE_MESSAGES,
  ...OUTLINE_MESSAGES,
  ...MESH_MESSAGES,
  ...SCHEDULE_MESSAGES,
  ...SOUND_MESSAGES,
  ...LIBRARY_MESSAGES,
  ...REVISION_MESSAGES,
  ...LINK_MESSAGES,
  ...EXPORT_MESSAGES,
  ...EDIT_MESSAGES,
  ...PART_MESSAGES,
  ...TABLE_MESSAGES,
} as const satisfies Record<string, Message>;

export type MessageCode = keyof typeof MESSAGES;

const valuesOf = (params: Params): Values =>
  Object.fromEntries(Object.entries(params).map(([name, param]) => [name, paramText(param)]));

/** What goes into a message, in the language in force. */
export function paramText(param: Param): string | number {
  if (typeof param !== 'object') return param;
  if ('number' in param) return withDecimalSign(param.number);
  if ('state' in param) return t(STATE_NAMES[param.state]);
  return 'code' in param
    ? messageText(param.code, param.params)
    : t(param.text, valuesOf(param.values ?? {}));
}

/** One sentence for a fault or problem, in the language in force. */
export const messageText = (code: MessageCode, params: Params): string =>
  t(MESSAGES[code].text, valuesOf(params));
/** What the reader can do about it. */
export const messageAdvice = (code: MessageCode, params: Params): string =>
  t(MESSAGES[code].advice, valuesOf(params));

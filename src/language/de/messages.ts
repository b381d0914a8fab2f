/** German of the messages' texts and advice, one file per table. */
import { EDIT_MESSAGES } from './messages/edit';
import { EXPORT_MESSAGES } from './messages/export';
import { FILE_MESSAGES } from './messages/file';
import { LIBRARY_MESSAGES } from './messages/library';
import { LINK_MESSAGES } from './messages/link';
import { MESH_MESSAGES } from './messages/mesh';
import { OUTLINE_MESSAGES } from './messages/outline';
import { PART_MESSAGES } from './messages/part';
import { PLATE_MESSAGES } from './messages/plate';
import { REVISION_MESSAGES } from './messages/revision';
import { SCHEDULE_MESSAGES } from './messages/schedule';
import { SHARED_MESSAGES } from './messages/shared';
import { SOUND_MESSAGES } from './messages/sound';
import { TABLE_MESSAGES } from './messages/table';

export const MESSAGES = {
  ...EDIT_MESSAGES,
  ...EXPORT_MESSAGES,
  ...FILE_MESSAGES,
  ...LIBRARY_MESSAGES,
  ...LINK_MESSAGES,
  ...MESH_MESSAGES,
  ...OUTLINE_MESSAGES,
  ...PART_MESSAGES,
  ...PLATE_MESSAGES,
  ...REVISION_MESSAGES,
  ...SCHEDULE_MESSAGES,
  ...SHARED_MESSAGES,
  ...SOUND_MESSAGES,
  ...TABLE_MESSAGES,
};

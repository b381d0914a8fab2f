/**
 * Where buttons find the workbench and the page's ports that their commands need.
 */
import { createContext } from 'react';
import type { Context } from '../commands/types';

export const CommandContext = createContext<Context | null>(null);

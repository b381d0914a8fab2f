/**
 * The terminal's way from a layout file to its link: `npm run --silent link -- FILE`.
 */
import { linkCommand } from './link';
import { EXIT_OK } from './output';

const { exitCode, text } = linkCommand(process.argv.slice(2));
process.exitCode = exitCode;
(exitCode === EXIT_OK ? process.stdout : process.stderr).write(text);

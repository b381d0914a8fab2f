/**
 * The terminal's way into the engine: `npm run --silent analyse -- FILE [--height MM]`.
 */
import { analyseCommand } from './analyse';
import { EXIT_OK } from './output';

const { exitCode, text } = analyseCommand(process.argv.slice(2));
process.exitCode = exitCode;
(exitCode === EXIT_OK ? process.stdout : process.stderr).write(text);

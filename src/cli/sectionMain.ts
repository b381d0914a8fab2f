/**
 * The terminal's way to sections: `npm run --silent section -- MESH-OR-OUTLINE [--layer MM] [--height MM]`.
 */
import { EXIT_OK } from './output';
import { sectionCommand } from './section';

const { exitCode, text } = sectionCommand(process.argv.slice(2));
process.exitCode = exitCode;
(exitCode === EXIT_OK ? process.stdout : process.stderr).write(text);

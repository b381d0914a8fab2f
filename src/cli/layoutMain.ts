/**
 * The terminal's way from a link to its layout file: `npm run --silent layout -- LINK`.
 */
import { layoutCommand } from './layout';
import { EXIT_OK } from './output';

const { exitCode, text } = layoutCommand(process.argv.slice(2));
process.exitCode = exitCode;
(exitCode === EXIT_OK ? process.stdout : process.stderr).write(text);

/** The commands of the program, their options and their help. */
import { readFileSync } from 'node:fs';
import { Argument, Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import { cardKinds } from '../cards/new.ts';
import { JournalTrouble } from '../journal/trouble.ts';
import type { ServeCommandOptions } from './commands/serve.ts';
import { withBridgeOptions } from './commands/serve-bridges.ts';
import { Refusal } from './refusal.ts';

const data = [
  '--data <dir>',
  'folder of the journal (default: roastcall among your data)',
] as const;
const journal = [
  '--journal <url>',
  'postgres://… instead, shared by several processes (or ROASTCALL_JOURNAL)',
] as const;
const cards = ['--cards <dir>', 'a folder of your own cards, beside the built-in ones'] as const;

/** Runs the command line; gives the exit code and never throws. */
export async function run(words: readonly string[]): Promise<number> {
  let code = 0;
  const done: Done =
    (load) =>
    async (...words) => {
      const command = await load();
      code = await command(...words);
    };
  try {
    const program = programOf(done);
    const [first] = words;
    const names = ['help', ...program.commands.map((one) => one.name())];
    if (first !== undefined && !first.startsWith('-') && !names.includes(first))
      throw new Refusal(`There is no command "${first}"; there are ${names.join(', ')}.`, 2);
    await program.parseAsync(words, { from: 'user' });
    return code;
  } catch (error) {
    return failed(error);
  }
}

/** Runs a command to its exit code; only the command that was given is loaded. */
type Done = <A extends unknown[]>(
  load: () => Promise<(...words: A) => Promise<number>>,
) => (...words: A) => Promise<void>;

function programOf(done: Done): Command {
  const program = new Command('roastcall')
    .description('A helper that stands beside the cook of one large roast.')
    .configureOutput({ outputError: () => undefined })
    .exitOverride();
  const command = (name: string, description: string, under = program): Command =>
    withVersion(under.command(name, { isDefault: name === 'talk' }).description(description));
  withVersion(program);

  command('talk', 'chat in the terminal; announcements come unasked, the open dinner goes on')
    .option('--dinner <id>', 'a dinner by its name, new or known')
    .option(...data)
    .option(...journal)
    .option(...cards)
    .action(done(async () => (await import('./commands/talk.ts')).talkCommand));
  command('rehearse', 'run session scripts on a simulated clock')
    .argument('<file...>', 'scripts, *.session.txt')
    .option('--json', 'print the results as JSON')
    .option('--restart-every-turn', 'reopen the dinner from its log after every line')
    .option('--coverage', 'tell what the scripts reached, and a line for what they did not')
    .option('--junit <file>', 'write the results there too, as XML for a build server')
    .option('--budget <ms>', 'an answer that takes longer falls short', milliseconds)
    .addOption(
      new Option('--update', 'ask of each difference whether it is right, and write it').conflicts([
        'json',
        'watch',
      ]),
    )
    .addOption(
      new Option('--watch', 'stay, and play a script again when its file changes').conflicts([
        'json',
        'junit',
      ]),
    )
    .option(...cards)
    .action(done(async () => (await import('./commands/rehearse.ts')).rehearseCommand));
  command('understand', 'JSON lines in and out: what a text is taken to mean')
    .option(...cards)
    .action(done(async () => (await import('./commands/lines.ts')).understandCommand));
  command('forecast', 'JSON lines in and out: the heat forecast alone')
    .option(...cards)
    .action(done(async () => (await import('./commands/lines.ts')).forecastCommand));
  command('plan', "print the day's plan for a dinner written as YAML or JSON")
    .argument('[file]', 'the written dinner')
    .option('--json', 'print the plan as JSON')
    .option('--svg', 'draw it: lanes for hands, ovens, the roast and the dishes')
    .option('--schema', 'print the JSON Schema of such a file')
    .option(...cards)
    .action(done(async () => (await import('./commands/plan.ts')).planCommand));
  command('log', "print a dinner's log as JSON lines")
    .argument('<dinner>', 'its name')
    .addOption(
      new Option('--as <form>', 'script: a session script that reproduces the dinner')
        .choices(['json', 'script'])
        .default('json'),
    )
    .option(...data)
    .option(...journal)
    .action(done(async () => (await import('./commands/log.ts')).logCommand));
  command('record', 'what was planned and what happened in a dinner, as a page')
    .argument('<dinner>', 'its name')
    .option('--to <dir>', 'write it there, as Markdown with its drawing in SVG')
    .option(...data)
    .option(...journal)
    .action(done(async () => (await import('./commands/record.ts')).recordCommand));
  command('demo', 'play a whole invented dinner in under a minute')
    .option('--fast', 'without pauses')
    .action(done(async () => (await import('./commands/demo.ts')).demoCommand));
  addServeCommand(command, done);
  addCardCommands(command, done);
  addAccessCommands(command, done);
  return program;
}

function addServeCommand(
  command: (name: string, description: string) => Command,
  done: Done,
): void {
  const serve = command('serve', 'HTTP, live events and the bridges that are switched on')
    .option('--host <host>', 'address to listen on', '127.0.0.1')
    .option('--port <port>', 'port to listen on', '8080')
    .option(...data)
    .option(...journal)
    .option(...cards)
    .addOption(
      new Option('--clock <clock>', 'simulated: time moves only where a caller says so')
        .choices(['real', 'simulated'])
        .default('real'),
    )
    .option('--pair', 'print a code, as a picture too, that lets a tablet in')
    .option('--https', 'with a certificate of its own making, for microphone and wake lock')
    .option('--token <token>', 'what callers must show (better: ROASTCALL_TOKEN)')
    .option('--without-token', 'let everyone in beyond this machine')
    .addOption(
      new Option('--log <what>', 'JSON lines on stderr; words: with what was said')
        .choices(['errors', 'requests', 'words'])
        .default('errors'),
    );
  withBridgeOptions(serve).action(
    done(async () => {
      const { serveCommand } = await import('./commands/serve.ts');
      return (options: ServeCommandOptions) => serveCommand(options, versionOf());
    }),
  );
}

function addAccessCommands(
  command: (name: string, description: string, under?: Command) => Command,
  done: Done,
): void {
  const house = ['--household <name>', 'which household', 'home'] as const;
  command('pair', 'print a code that lets one more tablet in, for a server that runs already')
    .argument('<address>', "the server's address, as it printed it")
    .option(...house)
    .option(...data)
    .option(...journal)
    .action(done(async () => (await import('./commands/access.ts')).pairCommand));
  const token = command('token', 'who may come in beyond this machine');
  command('make', 'make a token and print it, once', token)
    .option(...house)
    .option('--label <words>', 'what to call it', 'made by command')
    .option(...data)
    .option(...journal)
    .action(done(async () => (await import('./commands/access.ts')).makeTokenCommand));
  command('list', 'every token by its id, without its secret', token)
    .option(...data)
    .option(...journal)
    .action(done(async () => (await import('./commands/access.ts')).listTokensCommand));
  command('revoke', 'shut a token out, at once', token)
    .argument('<id>', 'from `token list`')
    .option(...data)
    .option(...journal)
    .action(done(async () => (await import('./commands/access.ts')).revokeTokenCommand));
  const household = command('household', 'more than one household in one data folder');
  command('set', 'make a household, or change how its dinners begin', household)
    .argument('<name>', 'small letters, digits, dashes')
    .option('--zone <zone>', 'IANA time zone, such as America/Chicago')
    .addOption(new Option('--temperature <unit>', 'its degrees').choices(['F', 'C']))
    .addOption(new Option('--weight <unit>', 'its weights').choices(['lb', 'kg']))
    .option('--language <language>', 'language spoken')
    .option(...data)
    .option(...journal)
    .action(done(async () => (await import('./commands/access.ts')).setHouseholdCommand));
  command('export', 'all that is kept of a household, as JSON lines', household)
    .argument('<name>', 'which one')
    .option(...data)
    .option(...journal)
    .action(done(async () => (await import('./commands/journal.ts')).exportCommand));
  command('erase', 'a household with all its dinners and tokens, for good', household)
    .argument('<name>', 'which one')
    .option('--sure', 'do it')
    .option(...data)
    .option(...journal)
    .action(done(async () => (await import('./commands/journal.ts')).eraseCommand));
  const log = command('journal', 'where dinners are kept');
  command('copy', 'copy dinners between a data folder and a database, and check them', log)
    .argument('<from>', 'a data folder, or postgres://…')
    .argument('<to>', 'the same')
    .option('--household <name>', 'one household; all of them if left out')
    .action(done(async () => (await import('./commands/journal.ts')).copyCommand));
}

function addCardCommands(
  command: (name: string, description: string, under?: Command) => Command,
  done: Done,
): void {
  const card = command('card', 'dishes of your own, as cards');
  command('new', 'write a fresh card into this folder', card)
    .addArgument(new Argument('<kind>', 'what it is').choices(cardKinds))
    .argument('<title...>', 'what it is called')
    .option('--print', 'print it instead')
    .action(
      done(async () => {
        const { newCardCommand } = await import('./commands/card.ts');
        return (kind: (typeof cardKinds)[number], title: string[], options: { print?: boolean }) =>
          newCardCommand(kind, title.join(' '), options);
      }),
    );
  command('check', 'say what is wrong with a card, line by line', card)
    .argument('<file...>', 'cards, *.yaml')
    .action(done(async () => (await import('./commands/card.ts')).checkCardCommand));
}

function milliseconds(text: string): number {
  const value = Number(text);
  if (!(value > 0)) throw new InvalidArgumentError('Give milliseconds above zero, such as 300.');
  return value;
}

function versionOf(): string {
  const text = readFileSync(new URL('../../package.json', import.meta.url), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}

function withVersion(command: Command): Command {
  return command.version(versionOf(), '-V, --version', 'print the version');
}

/** One sentence on stderr, with what to do next. */
function failed(error: unknown): number {
  if (error instanceof CommanderError) {
    if (error.exitCode === 0) return 0;
    const what = error.message.replace(/^error: /, '').replace(/\s*\n\s*/g, ' ');
    // Help asked for by giving no command at all is commander's own message.
    const sentence = what === '(outputHelp)' ? 'name what to do' : what.replace(/\.$/, '');
    process.stderr.write(`roastcall: ${sentence}; see roastcall --help.\n`);
    return 2;
  }
  if (error instanceof Refusal || error instanceof JournalTrouble) {
    process.stderr.write(`${error.message}\n`);
    return error instanceof Refusal ? error.code : 1;
  }
  const why = error instanceof Error ? (error.stack ?? error.message) : String(error);
  process.stderr.write(`roastcall broke, and nothing it had written is lost: ${why}\n`);
  return 1;
}

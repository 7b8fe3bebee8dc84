/** The text of a fresh card, explained line by line, ready to be filled in; it loads as it stands. */
import { type Card, roastMoments } from '../kitchen/card.ts';
import { glossary } from './glossary.ts';

export type CardKind = Card['card'];

export const cardKinds: readonly CardKind[] = ['roast', 'side', 'sauce', 'butter'];

/** The id that a title makes: "Nan's Red Cabbage" becomes "nans-red-cabbage". */
export const idOfTitle = (title: string): string =>
  title
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[^a-z0-9 -]/g, '')
    .trim()
    .replace(/[ -]+/g, '-')
    .replace(/^[^a-z]+/, '') || 'my-card';

/** A card of a kind as YAML text, each field with what it is for as a comment above it. */
export function newCardText(kind: CardKind, title: string): string {
  const name = title.toLowerCase().trim() || 'my card';
  const head = [
    '# A card of your own. Lines that begin with # are notes and may go.',
    '# Spoken words: short, one breath each. Write no temperatures into them; in braces the household',
    '# hears its own: {searTemperature} {roastTemperature} {pullTemperature} {ovenTemperature} {guests}',
    '# {vulnerableGuests} {consumerMinimum} {coreTemperature}',
    '',
    ...field('card', kind),
    ...field('id', idOfTitle(title)),
    ...field('title', quoted(name)),
    ...field('names', `[${quoted(name)}]`),
    ...field('serves', 'as many as there are guests'),
    ...(kind === 'roast' ? [] : field('usual', 'false')),
    '',
    ...ingredientLines(kind, name),
    '',
    ...(kind === 'roast' ? roastLines(name) : dishLines(kind, name)),
  ];
  return `${head.join('\n')}\n`;
}

const quoted = (words: string): string => JSON.stringify(words);

function field(name: string, value: string, indent = '', about = name): string[] {
  return [`${indent}# ${glossary[about] ?? ''}`, `${indent}${name}:${value ? ` ${value}` : ''}`];
}

function ingredientLines(kind: CardKind, name: string): string[] {
  const meat = kind === 'roast';
  return [
    ...field('ingredients', ''),
    `  # item: ${glossary.item}`,
    `  - item: ${quoted(name)}`,
    ...field('amount', meat ? '350' : '150', '    '),
    ...field('unit', 'g', '    '),
    ...field('per', 'guest', '    '),
    ...field('shelf', meat ? 'butcher' : 'vegetables', '    '),
    ...field('allergens', '[]', '    '),
    ...(meat ? field('meat', 'true', '    ') : []),
    ...field('instead', 'Say here what does instead, how much of it, and what changes.', '    '),
  ];
}

function holdLines(): string[] {
  return [
    ...field('hold', ''),
    ...field('minutes', '20', '  ', 'hold.minutes'),
    ...field('how', 'Say here how it waits.', '  ', 'hold.how'),
  ];
}

interface StepText {
  id: string;
  title: string;
  call: string;
  /** Absent: a clause made of the title. */
  done?: string;
  minutes: string;
  hands: string;
  extra?: readonly string[];
}

/** One step; only the first of a card carries the notes. */
function stepLines(step: StepText, noted: boolean): string[] {
  const line = (name: string, value: string): string[] =>
    noted ? field(name, value, '    ') : [`    ${name}: ${value}`];
  return [
    ...(noted ? [`  # id: ${glossary.id}`] : []),
    `  - id: ${step.id}`,
    ...line('title', quoted(step.title)),
    ...line('call', quoted(step.call)),
    ...line('done', quoted(step.done ?? `${step.title} is done`)),
    ...line('minutes', step.minutes),
    ...line('hands', step.hands),
    ...(step.extra ?? []).map((text) => `    ${text}`),
    ...(noted ? [`    # ${glossary.how}`] : []),
    '    how:',
    '      - Say here how it is done.',
    ...line('right', 'Say here what tells that it is right.'),
    ...line('wrong', 'Say here what goes wrong, and how to mend it.'),
  ];
}

function dishLines(kind: CardKind, name: string): string[] {
  const steps: StepText[] = [
    {
      id: 'prepare',
      title: `prepare ${name}`,
      call: `Prepare ${name} now.`,
      done: `${name} is prepared`,
      minutes: '[5, 8, 12]',
      hands: 'throughout',
    },
  ];
  if (kind === 'side')
    steps.push({
      id: 'in',
      title: `put ${name} in`,
      call: `In it goes: ${name}.`,
      done: `${name} is in`,
      minutes: '[30, 40, 50]',
      hands: 'start',
      extra: [
        `# ${glossary.ready}`,
        'ready: Say here what to have at hand.',
        `# ${glossary.after}`,
        'after:',
        '  - step: prepare',
        `    # ${glossary.maxMinutes}`,
        '    maxMinutes: 120',
        `# ${glossary.ends}`,
        'ends:',
        `  # ${glossary.anchor}`,
        '  anchor: pull',
        `  # ${glossary.earliestMinutes}`,
        '  earliestMinutes: -15',
        '  likelyMinutes: 0',
        '  latestMinutes: 40',
        `# ${glossary.oven}`,
        'oven:',
        '  lowFahrenheit: 300',
        '  likelyFahrenheit: 325',
        '  highFahrenheit: 425',
      ],
    });
  steps.push({
    id: 'finish',
    title: `finish ${name}`,
    call: `Finish ${name} for the table.`,
    done: `${name} is finished`,
    minutes: '[2, 3, 5]',
    hands: 'throughout',
    extra: ['ends: { anchor: table, earliestMinutes: -20, likelyMinutes: -4, latestMinutes: 0 }'],
  });
  return [
    ...holdLines(),
    '',
    ...field('steps', ''),
    ...steps.flatMap((step, index) => [
      ...(index > 0 ? [''] : []),
      ...stepLines(step, index === 0),
    ]),
  ];
}

function roastLines(name: string): string[] {
  return [
    ...field('shape', ''),
    ...field('form', 'long-cylinder', '  '),
    ...field('aspect', '2.3', '  '),
    ...field('composition', '{ water: 0.67, protein: 0.20, fat: 0.12 }', '  '),
    ...field('source', 'a guess of my own', '  '),
    ...field('methods', ''),
    `  # ${glossary['sear-first']}`,
    '  sear-first: { searFahrenheit: 450, searMinutes: 15, roastFahrenheit: 325 }',
    `  # ${glossary['sear-last']}`,
    '  sear-last: { roastFahrenheit: 250, searFahrenheit: 500, searMinutes: 8 }',
    `  # ${glossary.steady}`,
    '  steady: { roastFahrenheit: 325 }',
    ...field('restMinutes', ''),
    '  - { toKilograms: 1.8, minutes: [10, 15, 20] }',
    '  - { toKilograms: 16, minutes: [20, 30, 45] }',
    ...field('pink', 'false'),
    ...field('carve', '{ fixedMinutes: 3, minutesPerGuest: 0.7 }'),
    ...holdLines(),
    '',
    '# A roast must have the steps below; add its own mise en place before them.',
    ...field('steps', ''),
    ...roastSteps(name).flatMap((step, index) => [
      ...(index > 0 ? [''] : []),
      ...stepLines(step, index === 0),
    ]),
  ];
}

/** Words to begin with for the moments every roast has; the chart knows them by these ids. */
function roastSteps(name: string): StepText[] {
  const moments: Record<MomentId, Omit<StepText, 'id'>> = {
    'oven-on': moment(
      'turn the oven on',
      'Turn the oven on, to {ovenTemperature}.',
      '[20, 25, 30]',
    ),
    'roast-in': {
      ...after(`put ${name} in`, `In it goes: ${name}.`, ['oven-on']),
      hands: 'start',
    },
    'oven-down': only(
      after('turn the oven down', 'Turn the oven down to {roastTemperature}.', ['roast-in']),
      'sear-first',
    ),
    check: after('take a reading', 'Take a reading in the thickest part.', ['roast-in']),
    pull: after(`pull ${name}`, 'Pull it now, at {pullTemperature}.', ['roast-in']),
    rest: {
      ...after('let it rest', 'Foil over it like a roof, and leave it be.', ['pull']),
      minutes: '[15, 20, 30]',
      hands: 'none',
    },
    'oven-up': only(
      {
        ...after('turn the oven up', 'Turn the oven up, to {searTemperature}.', ['pull']),
        minutes: '[15, 20, 25]',
        hands: 'start',
      },
      'sear-last',
    ),
    sear: only(
      { ...after('sear it', 'Back in to brown; stay close.', ['oven-up', 'rest']), hands: 'start' },
      'sear-last',
    ),
    carve: after('carve', 'Carve for {guests}.', ['rest']),
    serve: after('serve', 'To the table.', ['carve']),
    'put-away': after('put the rest away', 'Leftovers into the fridge now.', ['serve']),
  };
  return roastMoments.map((id) => ({ id, ...moments[id] }));
}

type MomentId = (typeof roastMoments)[number];

const moment = (title: string, call: string, minutes: string): Omit<StepText, 'id'> => ({
  title,
  call,
  minutes,
  hands: 'start',
});

const after = (title: string, call: string, steps: readonly string[]): Omit<StepText, 'id'> => ({
  title,
  call,
  minutes: '[1, 2, 4]',
  hands: 'throughout',
  extra: ['after:', ...steps.map((step) => `  - step: ${step}`)],
});

const only = (step: Omit<StepText, 'id'>, method: string): Omit<StepText, 'id'> => ({
  ...step,
  extra: [`only: [${method}]`, ...(step.extra ?? [])],
});

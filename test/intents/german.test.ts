import { describe, expect, it } from 'vitest';
import { numberWord } from '../../src/intents/de/numbers.ts';
import { read } from '../../src/intents/read.ts';
import { lexiconOf } from '../../src/kitchen/card.ts';
import { actsFalsely, contextOf, germanRows, isPassive, right } from '../corpus/score.ts';
import { at, cards, zone } from '../harness/day.ts';

const context = {
  language: 'de' as const,
  now: at('16:30'),
  timeZone: zone,
  stage: 'low-roast' as const,
  units: { temperature: 'C' as const, weight: 'kg' as const },
  paused: false,
  dishes: ['roast-potatoes', 'green-beans'],
  openSteps: [],
  lexicon: lexiconOf(cards),
};

/** The first meaning of each, with every slot that must be so. All invented. */
const cases: readonly (readonly [string, Record<string, unknown>])[] = [
  [
    'Hochrippe mit drei Knochen, 3,2 Kilo',
    { intent: 'describe-roast', cut: 'rib-roast', weight: 3.2, bones: 3 },
  ],
  ['Essen um halb sieben', { intent: 'set-serving-time', time: '18:30' }],
  ['wir essen um 18:30', { intent: 'set-serving-time', time: '18:30' }],
  ['Abendessen um Viertel vor acht', { intent: 'set-serving-time', time: '19:45' }],
  ['wir essen um fünf nach halb sieben', { intent: 'set-serving-time', time: '18:35' }],
  ['wir sind zu acht', { intent: 'set-guests', count: 8 }],
  ['es kommen zwei Gäste mehr', { intent: 'set-guests', change: 2 }],
  ['medium bitte', { intent: 'set-doneness', doneness: 'medium' }],
  ['keine Soße', { intent: 'drop-dish', dish: 'pan-gravy' }],
  ['der Braten ist drin', { intent: 'report-started', step: 'roast-in' }],
  [
    'der Braten ist seit halb vier im Ofen',
    { intent: 'report-started', step: 'roast-in', time: '15:30' },
  ],
  [
    'die Kartoffeln sind vor zehn Minuten rein',
    { intent: 'report-started', step: 'roast-potatoes.in', minutesAgo: 10 },
  ],
  ['es hat achtundvierzig Komma fünf Grad', { intent: 'report-reading', temperature: 48.5 }],
  ['Kerntemperatur 48,5', { intent: 'report-reading', temperature: 48.5 }],
  ['ich habe den Ofen auf 150 runtergedreht', { intent: 'report-oven', temperature: 150 }],
  ['die Gäste kommen eine halbe Stunde später', { intent: 'shift-serving', minutes: 30 }],
  ['was kommt als nächstes', { intent: 'ask-next' }],
  ['wie lange dauert es noch', { intent: 'ask-time-left' }],
  ['stell einen Timer auf zehn Minuten', { intent: 'set-timer', minutes: 10 }],
  ['sag Bescheid, wenn er 50 Grad hat', { intent: 'watch', temperature: 50 }],
  ['nein, ich meinte 46', { intent: 'correct', temperature: 46 }],
  ['der Braten ist raus', { intent: 'report-out' }],
  ['es brennt im Ofen', { intent: 'emergency', kind: 'fire' }],
  ['gestern hatte es 48 Grad', { intent: 'unrelated' }],
];

describe('German', () => {
  it.each(cases)('%s', (text, wanted) => {
    expect(read(text, context)[0]).toMatchObject(wanted);
  });

  it('counts from nought to a thousand in words', () => {
    // Formed by the rules of German grammar: unit, "und", ten.
    expect(
      [
        'null',
        'siebzehn',
        'einundzwanzig',
        'neunundneunzig',
        'hundertvier',
        'zweihundertdreißig',
        'dreieinhalb',
      ].map(numberWord),
    ).toEqual([0, 17, 21, 99, 104, 230, 3.5]);
  });

  it('reads sentences written by someone who has not seen the rules, nine of ten', () => {
    const told = germanRows.filter((row) => !isPassive(row));
    const ok = told.filter((row) => right(row, read(row.text, contextOf(row))));
    expect(told.length).toBeGreaterThanOrEqual(20);
    expect(ok.length).toBeGreaterThanOrEqual(told.length * 0.9);
  });

  it('leaves most overheard German alone', () => {
    const idle = germanRows.filter(isPassive);
    const acted = idle.filter((row) => actsFalsely(row, read(row.text, contextOf(row))));
    expect(acted.length).toBeLessThanOrEqual(idle.length / 2);
  });
});

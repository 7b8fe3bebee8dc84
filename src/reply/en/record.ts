/** The record of a dinner as a page in Markdown. */
import { localTime, minutesBetween } from '../../base/time.ts';
import { fahrenheitDegreesOfKelvin, temperatureIn, weightIn } from '../../base/units.ts';
import type {
  DinnerRecord,
  Lesson,
  RecordedMoment,
  RecordedReading,
} from '../../kitchen/record.ts';
import { guestName } from './names.ts';

const text = (value: number, digits = 0): string => value.toFixed(digits);

class Page {
  private readonly record: DinnerRecord;

  constructor(record: DinnerRecord) {
    this.record = record;
  }

  degrees(celsius: number): string {
    const { temperature } = this.record.units;
    return `${text(temperatureIn(celsius, temperature))} °${temperature}`;
  }

  apart(kelvin: number): string {
    const { temperature } = this.record.units;
    const value = temperature === 'F' ? fahrenheitDegreesOfKelvin(kelvin) : kelvin;
    return `${text(Math.abs(value))} °${temperature}`;
  }

  time(at: number | undefined): string {
    if (at === undefined) return '–';
    return localTime(at, this.record.timeZone).time;
  }

  date(at: number): string {
    return localTime(at, this.record.timeZone).date;
  }

  /** A time with its date where that is not the dinner's. */
  moment(at: number | undefined): string {
    if (at === undefined) return '–';
    const day = this.date(this.record.serving.wantedAt ?? at);
    return this.date(at) === day ? this.time(at) : `${this.date(at)} ${this.time(at)}`;
  }

  weight(kilograms: number): string {
    const { weight } = this.record.units;
    return `${text(weightIn(kilograms, weight), 1)} ${weight}`;
  }
}

const gap = (planned: number | undefined, happened: number | undefined): string => {
  if (planned === undefined || happened === undefined) return '';
  const minutes = Math.round(minutesBetween(planned, happened));
  if (minutes === 0) return 'on time';
  return minutes > 0 ? `${minutes} min late` : `${-minutes} min early`;
};

/** `chart`: the file of the drawing beside the page, if there is one. */
export function recordPage(
  record: DinnerRecord,
  options: { chart?: string | undefined } = {},
): string {
  const page = new Page(record);
  const parts = [
    `# ${capital(record.roast.title)}, ${page.date(record.serving.wantedAt ?? record.openedAt)}`,
    summary(record, page),
    options.chart ? `![Core temperature against the forecast](${options.chart})` : '',
    section('Planned and happened', momentTable(record, page)),
    section('Readings', readingTable(record, page)),
    section('On the way', onTheWay(record, page)),
    section('What to do differently', lessonList(record, page)),
    section('Where the next dinner begins', prior(record, page)),
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

const section = (title: string, body: string): string =>
  body === '' ? '' : `## ${title}\n\n${body}`;

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

function summary(record: DinnerRecord, page: Page): string {
  const { roast, serving } = record;
  const size = [
    roast.kilograms === undefined ? '' : page.weight(roast.kilograms),
    roast.bones === undefined ? '' : `${roast.bones} ${roast.bones === 1 ? 'bone' : 'bones'}`,
  ].filter((one) => one !== '');
  const done =
    record.serveCelsius === undefined
      ? ''
      : ` wanted ${record.doneness ? `${record.doneness.replace('-', ' ')}, ` : ''}${page.degrees(record.serveCelsius)}`;
  const knife = record.coreAtKnifeCelsius
    ? `; at the knife about ${page.degrees(record.coreAtKnifeCelsius.p50)}`
    : '';
  const lines = [
    `${capital(roast.title)}${size.length > 0 ? ` (${size.join(', ')})` : ''} for ${record.guests ?? 'some'},${done}${knife}.`,
    record.menu.length > 0 ? `With ${record.menu.join(', ')}.` : '',
    record.notes.length > 0 ? `At table: ${record.notes.map(noteText).join('; ')}.` : '',
    serving.servedAt === undefined
      ? `Dinner was wanted at ${page.time(serving.wantedAt)}; nobody told when it was served.`
      : `Dinner was wanted at ${page.time(serving.wantedAt)}${
          serving.firstWantedAt !== serving.wantedAt
            ? ` (${page.time(serving.firstWantedAt)} at first)`
            : ''
        } and served at ${page.time(serving.servedAt)}.`,
  ];
  return lines.filter((line) => line !== '').join('\n');
}

function noteText({ who, need, value }: DinnerRecord['notes'][number]): string {
  const what = (value ?? '').replace(/-/g, ' ');
  const words: Record<typeof need, string> = {
    vulnerable: 'nothing pink',
    allergy: /c(o)?eliac/.test(what) ? what : `allergic to ${what || 'something'}`,
    diet: what || 'on a diet',
    doneness: `wanted it ${what}`,
    'eats-at': `ate at ${value ?? 'another hour'}`,
    'comes-later': value?.includes(':') ? `came at ${value}` : `came ${what} minutes later`,
  };
  return `${guestName(who).text}, ${words[need]}`;
}

const table = (heads: readonly string[], rows: readonly (readonly string[])[]): string =>
  rows.length === 0
    ? ''
    : [heads, heads.map(() => '---'), ...rows]
        .map((cells) => `| ${cells.join(' | ')} |`)
        .join('\n');

function momentTable(record: DinnerRecord, page: Page): string {
  const row = (one: RecordedMoment): string[] => [
    one.title,
    page.moment(one.plannedAt),
    page.moment(one.lastToldAt),
    `${page.moment(one.happenedAt)}${one.presumed ? ' (taken for granted)' : ''}`,
    gap(one.lastToldAt ?? one.plannedAt, one.happenedAt),
  ];
  return table(
    ['', 'planned', 'last told', 'happened', 'against the last told'],
    record.moments.map(row),
  );
}

function readingTable(record: DinnerRecord, page: Page): string {
  const row = (one: RecordedReading): string[] => {
    const off = one.forecast ? one.celsius - one.forecast.p50 : undefined;
    const inBand =
      one.forecast && one.celsius >= one.forecast.p10 && one.celsius <= one.forecast.p90
        ? 'within the band'
        : 'outside the band';
    return [
      page.time(one.at),
      page.degrees(one.celsius),
      one.forecast
        ? `${page.degrees(one.forecast.p50)} (${page.degrees(one.forecast.p10)} to ${page.degrees(one.forecast.p90)})`
        : '–',
      off === undefined
        ? 'resting'
        : `${page.apart(off)} ${off >= 0 ? 'above' : 'below'}, ${inBand}`,
      one.suspect ? 'did not fit the others' : '',
    ];
  };
  return table(['at', 'read', 'forecast without it', '', ''], record.readings.map(row));
}

function onTheWay(record: DinnerRecord, page: Page): string {
  const events = [
    ...record.troubles.map((one) => ({ at: one.at, words: one.trouble.replace(/-/g, ' ') })),
    ...record.emergencies.map((one) => ({ at: one.at, words: `an emergency: ${one.kind}` })),
  ].sort((a, b) => a.at - b.at);
  return [
    ...record.chosen.map((title) => `- Taken: ${title}.`),
    ...events.map((one) => `- ${page.time(one.at)}: ${one.words}.`),
  ].join('\n');
}

function lessonList(record: DinnerRecord, page: Page): string {
  if (record.lessons.length === 0)
    return record.serving.servedAt === undefined ? '' : 'Nothing: do it the same way again.';
  return record.lessons.map((lesson) => `- ${lessonWords(lesson, page)}`).join('\n');
}

function lessonWords(lesson: Lesson, page: Page): string {
  switch (lesson.key) {
    case 'served-late':
      return `Served ${lesson.minutes} minutes late: begin so much sooner, and let the rest take up what is spare.`;
    case 'served-early':
      return `Served ${lesson.minutes} minutes early: begin later, or rest it longer.`;
    case 'oven-hot':
      return `The oven ran about ${page.apart(lesson.kelvin)} hotter than its dial: set it so much lower.`;
    case 'oven-cool':
      return `The oven ran about ${page.apart(lesson.kelvin)} cooler than its dial: set it so much higher.`;
    case 'thermometer-off':
      return `The thermometer read about ${page.apart(lesson.kelvin)} too ${lesson.kelvin > 0 ? 'high' : 'low'}: test it in ice, or buy another.`;
    case 'pulled-late':
      return `It came out ${lesson.minutes} minutes after it was called: board and cloths ready ten minutes before.`;
    case 'more-done':
      return `About ${page.apart(lesson.kelvin)} more done than wanted: pull it so much sooner.`;
    case 'less-done':
      return `About ${page.apart(lesson.kelvin)} less done than wanted: pull it so much later, or rest it longer.`;
    case 'few-readings':
      return `${lesson.count === 0 ? 'No reading' : 'One reading'} was taken: two, well apart, tell what the oven really does.`;
    case 'left-out':
      return `What was left stood out for ${lesson.minutes} minutes. The USDA's limit is two hours: throw it away if you are not sure.`;
    case 'put-away-untold':
      return 'Nobody told when the rest went into the fridge. The USDA says within two hours.';
    case 'salt-ahead-missed':
      return 'It was not salted the evening before: set an hour for it.';
    case 'still-frozen':
      return 'It went in with ice in its heart: a day in the fridge for every four pounds, next time.';
  }
}

function prior(record: DinnerRecord, page: Page): string {
  const { learnt } = record;
  if (!learnt) return '';
  const line = (name: string, { mean, deviation }: { mean: number; deviation: number }): string =>
    `- ${name}: ${page.apart(mean)} ${mean >= 0 ? 'high' : 'low'}, give or take ${page.apart(deviation)}.`;
  return [
    'From the readings, this kitchen is believed to be so:',
    '',
    line('The oven against its dial', learnt.ovenBiasKelvin),
    line('The thermometer', learnt.thermometerOffsetKelvin),
  ].join('\n');
}

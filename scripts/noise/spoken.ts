/** A typed line as somebody would say it: lower-case words only, figures as spoken. */

const ones =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const tens = 'zero ten twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

function belowHundred(value: number): string {
  if (value < 20) return ones[value]!;
  const unit = value % 10;
  return unit === 0 ? tens[value / 10]! : `${tens[Math.floor(value / 10)]} ${ones[unit]}`;
}

/** 104 is "one oh four" to most, "a hundred and four" to some: `formal` picks the second. */
export function spokenNumber(value: number, formal = false): string {
  if (value < 100) return belowHundred(value);
  const hundreds = Math.floor(value / 100);
  const rest = value % 100;
  if (rest === 0) return `${ones[hundreds]} hundred`;
  if (formal) return `${hundreds === 1 ? 'a' : ones[hundreds]} hundred and ${belowHundred(rest)}`;
  return `${ones[hundreds]} ${rest < 10 ? `oh ${ones[rest]}` : belowHundred(rest)}`;
}

export function spokenClock(hour: number, minute: number): string {
  const said = belowHundred(hour);
  if (minute === 0) return `${said} o'clock`;
  return minute < 10 ? `${said} oh ${ones[minute]}` : `${said} ${belowHundred(minute)}`;
}

const units: readonly [RegExp, string][] = [
  [/°\s?f\b|(?<=\d)\s?f\b/g, ' degrees fahrenheit'],
  [/°\s?c\b|(?<=\d)\s?c\b/g, ' degrees celsius'],
  [/°/g, ' degrees'],
  [/(?<=\d)\s?lbs?\b/g, ' pounds'],
  [/(?<=\d)\s?kg\b/g, ' kilos'],
  [/(?<=\d)\s?mins?\b/g, ' minutes'],
  [/(?<=\d)\s?pm\b/g, ' p m'],
];

/** Undefined when the line holds what nobody can say (emoji, fractions in figures, decimal commas). */
export function spoken(text: string, formal = false): string | undefined {
  let line = text.toLowerCase().replaceAll('’', "'");
  for (const [written, said] of units) line = line.replace(written, said);
  line = line
    .replace(/\b(\d{1,2}):(\d\d)\b/g, (_, hour, minute) => spokenClock(+hour, +minute))
    .replace(
      /\b(\d{1,3})\.(\d)\b/g,
      (_, whole, tenth) => `${spokenNumber(+whole, formal)} point ${ones[+tenth]}`,
    )
    .replace(/\b\d{1,3}\b/g, (figures) => spokenNumber(+figures, formal))
    .replace(/[-.,!?;:"()]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  return /^[a-z' ]+$/.test(line) ? line : undefined;
}

/**
 * What the cook takes back in the same breath: "seven, no, eight pounds", "it reads one oh four,
 * sorry, ninety four". The quantity first said goes, the second stays.
 */
import { lineOf } from '../clause.ts';
import { markOf, type Quantity } from '../quantity.ts';
import { faceOf } from '../recogniser.ts';
import type { Token } from '../token.ts';

const retracts =
  'no|sorry|hang on|let me (?:look|check|see|read)(?: it)?(?: again| closer| properly)?(?: (?:, )?(?:yes|ok|right))?|strike that|scrap that|my mistake|oh|well|meant|honestly|really|but really|but honestly|nah|oops|no wait|i misspoke|i misread|i mean|i meant|wait|make that|make it|or rather|rather|correction|scratch that|i lie|i tell a lie|let me|i should say|i would say|call it|that is|hold on|actually|no god|god no|dear me|whoops|typo|cancel that|i said|i read it wrong';
/** "hang on till I wipe the glass, no": what is done meanwhile. */
const meanwhile =
  '(?:hang on|hold on|let me)(?: (?!(?:and|but|when|till|once|if|know|tell|call) )[a-z]+){1,6} (?:, |[.] )?(?:no|yes|ok|right|it is|it says|it reads)';
const taking = new RegExp(
  `(?<=[^ ] |^)<([ntwdcg])(\\d+)> ((?:[a-z]+ ){0,2}?)((?:, |[.] (?=no |sorry |wait |oops |make that ))?(?:(?:${meanwhile}|${retracts}) (?:, )?){1,3}(?:(?:it is|it reads|at|not|for) )?)<([ntwdcg])(\\d+)> `,
);

export function corrected(tokens: readonly Token[], quantities: Quantity[]): Token[] {
  let out = [...tokens];
  for (let round = 0; round < 3; round++) {
    const line = lineOf(out);
    const match = taking.exec(line);
    if (!match) return out;
    if (/ not $/.test(match[4]!)) return out;
    // "Karen's three so that's nine" adds up, "starts at three and oh, make that twelve people" goes on,
    // "I didn't mean seven" says itself what is taken back.
    if (
      /(^| )(and|but|so|with|then|which|altogether) /.test(match[3] ?? '') ||
      / (not|not (mean|say)|not mean to|not mean to say|not want to say) $/.test(
        ` ${line.slice(0, match.index)}`,
      )
    )
      return out;
    // "it was 90 something, well, it's 106 now" goes on.
    if (match[3] !== '' && /^,? ?well /.test(match[4]!)) return out;
    const first = quantities[Number(match[2])]!;
    const secondIndex = Number(match[6]);
    quantities[secondIndex] = alike(first, quantities[secondIndex]!);
    const start = line.slice(0, match.index).split(' ').length - 1;
    const count = match[0].trim().split(' ').length;
    const words = (match[3] ?? '').trim();
    // "two minutes ago no three": how it is counted is said once.
    const counted =
      first.kind === 'duration' && /^(ago|late|later|early|earlier|behind)$/.test(words);
    const kept =
      words === '' || (quantities[secondIndex]!.kind !== 'number' && !counted)
        ? []
        : out.slice(start + 1, start + 1 + words.split(' ').length);
    const second = out[start + count - 1]!;
    // "a seven, no, eight pound": the words after the first are said again, or belong to both.
    const repeats = kept.length > 0 && out[start + count]?.word === kept[0]!.word;
    out = [
      ...out.slice(0, start),
      { ...second, word: markOf(quantities[secondIndex]!, secondIndex) },
      ...(repeats ? [] : kept),
      ...out.slice(start + count),
    ];
  }
  return out;
}

const saidOnce = (first: number, second: number): boolean =>
  first > 30 &&
  first < 250 &&
  first % 10 > 0 &&
  second > 0 &&
  second < 10 &&
  Number.isInteger(second);

/** "Twenty to" counts back from the hour that was named. */
const hourBeside = (hour: number | undefined, minute: number): number | undefined =>
  hour === undefined || minute <= 30 ? hour : hour === 1 ? 12 : hour - 1;

/** "seven pounds, no, eight": the bare second number is of the first one's kind. */
function alike(first: Quantity, second: Quantity): Quantity {
  // "seven, well, half past": the hour is said once.
  const hour = faceOf(first);
  if (second.kind === 'clock' && second.face.hour === undefined && hour?.minute === 0)
    return {
      kind: 'clock',
      face: {
        ...hour,
        minute: second.face.minute,
        hour: hourBeside(hour.hour, second.face.minute),
      },
    };
  // "forty eight, no, nine": the tens are said once.
  if (
    first.kind === 'number' &&
    second.kind === 'number' &&
    !first.face &&
    saidOnce(first.value, second.value)
  )
    return { ...second, value: first.value - (first.value % 10) + second.value };
  if (second.kind !== 'number' || first.kind === 'number') return second;
  switch (first.kind) {
    case 'weight':
      return { ...first, value: second.value };
    case 'temperature':
      return { ...first, value: second.value };
    case 'duration':
      return { ...first, minutes: second.value };
    case 'gas-mark':
      return { ...first, value: second.value };
    case 'clock':
    case 'date':
      return second;
  }
}

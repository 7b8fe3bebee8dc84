/** Every line of a card that may be spoken, with the place it stands in; used by the tests of cards. */
import type { Card } from '../../src/kitchen/card.ts';

export interface SpokenLine {
  where: string;
  text: string;
}

export function spokenLines(card: Card): SpokenLine[] {
  const lines: SpokenLine[] = [{ where: `${card.id} hold`, text: card.hold.how }];
  if (card.card === 'roast')
    for (const text of card.butcher ?? []) lines.push({ where: `${card.id} butcher`, text });
  for (const part of card.ingredients) {
    const where = `${card.id} ${part.item}`;
    if (part.instead) lines.push({ where, text: part.instead });
    for (const text of Object.values(part.free ?? {})) lines.push({ where: `${where} free`, text });
  }
  for (const step of card.steps) {
    const where = `${card.id}.${step.id}`;
    lines.push({ where: `${where} call`, text: step.call });
    for (const text of step.how) lines.push({ where: `${where} how`, text });
    for (const way of step.without ?? [])
      lines.push({ where: `${where} without ${way.tool}`, text: way.call });
    lines.push({ where: `${where} right`, text: step.right });
    lines.push({ where: `${where} wrong`, text: step.wrong });
    if (step.ready) lines.push({ where: `${where} ready`, text: step.ready });
    for (const variant of step.variants ?? []) {
      if (variant.call) lines.push({ where: `${where} variant`, text: variant.call });
      for (const text of variant.how ?? []) lines.push({ where: `${where} variant how`, text });
    }
    if (step.why) lines.push({ where: `${where} why`, text: step.why });
    if (step.caution) lines.push({ where: `${where} caution`, text: step.caution });
  }
  return lines;
}

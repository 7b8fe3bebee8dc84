/**
 * What dinners reached of all that there is to reach: states and transitions of the charts, intents,
 * reply keys, questions and announcements. The lists are the code's own catalogues; nothing here
 * names a state, an intent or a key.
 */
import { announcementKinds, type Fact, questionKinds } from '../kitchen/facts.ts';
import { intents } from '../kitchen/heard.ts';
import {
  dinnerRegions,
  dishRegion,
  type Passage,
  type RegionOfChart,
} from '../machine/passages.ts';
import { passagesOf } from '../machine/stage.ts';
import { wording } from '../reply/en/wording.ts';

/** The catalogues, in the order in which they are told. */
export const catalogues = [
  'states',
  'transitions',
  'intents',
  'reply keys',
  'questions',
  'announcements',
] as const;
export type Catalogue = (typeof catalogues)[number];

/** Of one catalogue: everything there is, and how many dinners reached each part of it. */
export interface Reach {
  catalogue: Catalogue;
  all: readonly string[];
  dinners: ReadonlyMap<string, number>;
}

const regions: readonly RegionOfChart[] = [...dinnerRegions, dishRegion];

const stateName = (region: string, state: string): string => `${region}.${state}`;

/** "oven: hot → lost by OVEN_LOST" */
export const passageName = ({ region, from, event, to }: Passage): string =>
  `${region}: ${from} → ${to} by ${event}`;

/** Every transition there is, by its name. */
export const passagesByName: ReadonlyMap<string, Passage> = new Map(
  regions.flatMap(({ passages }) => passages.map((one) => [passageName(one), one] as const)),
);

const everything: Record<Catalogue, readonly string[]> = {
  states: regions.flatMap(({ region, states }) => states.map((one) => stateName(region, one))),
  transitions: [...passagesByName.keys()],
  intents,
  'reply keys': Object.keys(wording),
  questions: questionKinds,
  announcements: announcementKinds,
};

/** What one dinner reached, by its facts alone. */
function reachedIn(facts: readonly Fact[]): Record<Catalogue, Set<string>> {
  const passages = passagesOf(facts);
  const reached: Record<Catalogue, Set<string>> = {
    states: new Set(dinnerRegions.map(({ region, initial }) => stateName(region, initial))),
    transitions: new Set(passages.map(passageName)),
    intents: new Set(),
    'reply keys': new Set(),
    questions: new Set(),
    announcements: new Set(),
  };
  for (const { region, from, to } of passages)
    reached.states.add(stateName(region, from)).add(stateName(region, to));
  for (const fact of facts) {
    if (fact.type === 'words-heard')
      for (const { intent } of fact.heard) reached.intents.add(intent);
    if (fact.type === 'replied') for (const key of fact.wording) reached['reply keys'].add(key);
    if (fact.type === 'question-asked') reached.questions.add(fact.question.kind);
    if (fact.type === 'announced') reached.announcements.add(fact.kind);
  }
  return reached;
}

/** Counts over dinners, each given by its facts. */
export function coverageOf(dinners: readonly (readonly Fact[])[]): Reach[] {
  const each = dinners.map(reachedIn);
  return catalogues.map((catalogue) => ({
    catalogue,
    all: everything[catalogue],
    dinners: new Map(
      everything[catalogue].map((name) => [
        name,
        each.filter((reached) => reached[catalogue].has(name)).length,
      ]),
    ),
  }));
}

/** What no dinner reached. */
export const unreached = ({ all, dinners }: Reach): string[] =>
  all.filter((name) => (dinners.get(name) ?? 0) === 0);

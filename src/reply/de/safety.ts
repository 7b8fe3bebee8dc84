/**
 * Rules of safety in German. Each names one authority and gives its figures alone, from the rules' data;
 * an authority keeps its own name. A household of the German tongue asks its own authority for what is
 * law there.
 */
import { figureOf, type SafetyRuleId } from '../../kitchen/safety.ts';
import type { Scene } from '../scene.ts';
import { type Spoken, say, silent } from '../spoken.ts';
import { authorityDegrees } from './words.ts';

/** A temperature of the rule, in the household's unit. */
const heat = (rule: SafetyRuleId, of: string, { dinner }: Scene): Spoken =>
  authorityDegrees(figureOf(rule, of).value, dinner.units);

const number = (rule: SafetyRuleId, of: string): number => figureOf(rule, of).value;

/** So much of roast to a day, or to half an hour, in the household's weight. */
const perWeight = ({ dinner }: Scene, pounds: string, kilograms: string): string =>
  dinner.units.weight === 'lb' ? pounds : kilograms;

const sentences: Record<SafetyRuleId, (scene: Scene) => Spoken> = {
  'below-145': (scene) =>
    say`Das USDA rät zu ${heat('below-145', 'core', scene)} und drei Minuten Ruhe; nichts Rosafarbenes für Schwangere, kleine Kinder, Alte und Kranke.`,
  'surface-inside': (scene) => {
    const stuffing =
      scene.dinner.roast.prepared === 'stuffed'
        ? say` Die Füllung: ${heat('surface-inside', 'stuffing', scene)} in der Mitte.`
        : silent;
    return say`Gerollt, gefüllt oder mürbe gestochen trägt das Fleisch seine Oberfläche innen: das USDA rät zu ${heat('surface-inside', 'core', scene)} und drei Minuten Ruhe.${stuffing}`;
  },
  vulnerable: (scene) =>
    say`Für sie nichts Rosafarbenes: das USDA rät zu ${heat('vulnerable', 'core', scene)}, gemessen, und drei Minuten Ruhe. Ihre Scheiben nachgaren, oder den ganzen Braten bis dahin.`,
  poultry: (scene) =>
    say`Geflügel und Füllung bis ${heat('poultry', 'poultry', scene)}, Hackfleisch bis ${heat('poultry', 'minced meat', scene)}, sagt das USDA.`,
  'oven-325': (scene) =>
    say`Die Tabellen des USDA wollen einen Ofen von ${heat('oven-325', 'oven', scene)} oder mehr; ein sanfterer ist deine Entscheidung.`,
  'oven-food-service': (scene) =>
    say`In der Gastronomie erlaubt der Food Code trockene ${heat('oven-food-service', 'from ten pounds', scene)} nur für Braten ab viereinhalb Kilo; darunter ${heat('oven-food-service', 'still oven, under ten pounds', scene)}, mit Umluft ${heat('oven-food-service', 'fan oven, under ten pounds', scene)}.`,
  hold: (scene) =>
    say`Das USDA hält Gegartes bei ${heat('hold', 'held', scene)} oder mehr warm, oder es wird binnen zwei Stunden gegessen.`,
  'hold-food-service': (scene) =>
    say`In der Gastronomie hält der Food Code Speisen bei ${heat('hold-food-service', 'held', scene)} oder mehr, einen nach seiner Tabelle gegarten Braten bei ${heat('hold-food-service', 'roast held', scene)}.`,
  'cook-food-service': (scene) =>
    say`Für die Gastronomie hat der Food Code eine Tabelle, die bei ${heat('cook-food-service', 'core', scene)} über ${number('cook-food-service', 'time at it')} Minuten endet, in einem Ofen, den er auch vorschreibt. Das ist eine Regel für geschulte Küchen, keine für zu Hause.`,
  'cool-food-service': (scene) =>
    say`In der Gastronomie kühlt der Food Code in zwei Stunden auf ${heat('cool-food-service', 'after two hours', scene)}, in sechs im Ganzen auf ${heat('cool-food-service', 'after six hours', scene)}.`,
  'plant-lethality': (scene) =>
    say`Fleischbetriebe zählen nach ihrer Tabelle, der plant table, abgetötete Keime ab ${heat('plant-lethality', 'counted from', scene)}. Für eine Küche zu Hause verspricht das nichts.`,
  'plant-come-up': () =>
    say`Nach der plant table, wie ich sie im Gedächtnis habe, ist ein Braten in höchstens sechs Stunden durch den lauwarmen Bereich.`,
  leftovers: (scene) =>
    say`Binnen zwei Stunden in den Kühlschrank, in drei bis vier Tagen gegessen, aufgewärmt auf ${heat('leftovers', 'reheated', scene)}, sagt das USDA.`,
  'out-of-fridge': (scene) =>
    say`Rohes Fleisch bleibt höchstens zwei Stunden draußen, eine in einem Raum über ${heat('out-of-fridge', 'a room that is not hot', scene)}, sagt das USDA.`,
  'raw-kept': (scene) =>
    say`Roh hält ein Braten drei bis fünf Tage im Kühlschrank bei ${heat('raw-kept', 'fridge', scene)} oder kälter, sagt das USDA.`,
  'thaw-fridge': (scene) =>
    say`Auftauen im Kühlschrank, bei ${heat('thaw-fridge', 'fridge', scene)} oder kälter: ein Tag für je ${perWeight(scene, 'vier bis fünf Pfund', 'zwei Kilo')}, sagt das USDA. Danach hält er roh drei bis fünf Tage.`,
  refreeze: () =>
    say`Was im Kühlschrank aufgetaut ist, darf wieder eingefroren werden, sagt das USDA; was mehr als zwei Stunden draußen lag, nicht.`,
  'thaw-water': (scene) =>
    say`Schneller geht kaltes Wasser: der Braten im dichten Beutel, alle halbe Stunde frisches Wasser, etwa ${perWeight(scene, 'eine halbe Stunde je Pfund', 'eine Stunde je Kilo')}, und gleich in den Ofen, sagt das USDA.`,
  thermometer: ({ dinner }) =>
    say`Der Food Code lässt einem Thermometer ${dinner.units.temperature === 'F' ? 'zwei Grad' : 'ein Grad'} Abweichung; Eiswasser zeigt es.`,
  allergy: () =>
    say`Jedes Etikett lesen; sauberes Brett, Messer und Pfanne für diesen Gast. Bei schwerer Allergie vorher absprechen, was im Notfall zu tun ist.`,
  'later-guests': (scene) =>
    say`Was auf sie wartet, bleibt ganz und bei ${heat('later-guests', 'held', scene)} oder mehr, oder wird binnen zwei Stunden gegessen, sagt das USDA.`,
  glass: () =>
    say`Nichts Kaltes in heißes Glas, und kein Glas unter den Grill: es springt. Splitter im Essen, und alles ist verloren.`,
  rest: (scene) =>
    say`Etwa fünfzehn Minuten bis ${perWeight(scene, 'vier Pfund', 'zwei Kilo')}, zwanzig bis dreißig bis ${perWeight(scene, 'acht', 'dreieinhalb')}, darüber dreißig bis fünfundvierzig. Das ist Küchenbrauch, keine Zahl einer Behörde.`,
  'raw-hands': () =>
    say`Den Braten nicht abspülen. Hände waschen, dann Brett, Messer, Wasserhahn und Platte, die ihn roh berührt haben.`,
  public: () =>
    say`Wer die Öffentlichkeit bewirtet, richtet sich nach den örtlichen Vorschriften und nach Fachleuten mit Zulassung. Frag sie; was ich sage, gilt für den Tisch zu Hause.`,
};

export const safetySentence = (rule: SafetyRuleId, scene: Scene): Spoken => sentences[rule](scene);

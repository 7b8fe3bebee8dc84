/** Families of words by which a clause shows what it is about, wherever they stand in it. */
import type { Match } from '../../recogniser.ts';

export const holds = (match: Match, words: RegExp): boolean => words.test(` ${match.line}`);

export const mealWords =
  / (dinner|supper|lunch|brunch|meal|mains|main course|eat|eats|eating|dine|dines|dining|serve|serves|serving|served|food|feast|table|sit down|sitting down|sits down|sit|ready|dish up|plate up|plates|tea|feed) /;
export const guestWords =
  / (guests?|visitors|people|company|family|in laws|relatives|lot|friends|folks|everyone|everybody|they|them|mum|dad|parents|sister|brother|aunt|uncle|gran|train|flight|traffic|kids|neighbours) /;
export const ovenWords =
  / (oven|cooker|stove|range|aga|dial|heat|preheat|preheating|preheated|gas|fan|burner|grill|hob) /;
export const coreWords =
  / (read|reads|reading|readings|red|says|shows|showing|probe|thermometer|thermometers|instant-read|leave-in|core|middle|centre|center|inside|internal|internally|thickest|deepest|needle|display|meat|roast|joint|beef|rib|lamb|pork|loin|tenderloin|fillet|topside|sirloin|temperature|spot|gauge|dial|registers|registering|measures|measured|bone|tip|end|probed|stuck|screen|app|kernel|heart|pen) /;
export const callWords =
  / (tell|ring|ask (me )?again|ask me|check (back )?with me|come back to me|get back to me|advise|let me know|let us know|shout|holler|yell|call|warn|warning|inform|alert|ping|beep|buzz|buzzer|nudge|poke|remind|reminder|notify|wake|signal|give me a|say when|speak up|sing out|flag|heads up|alarm|message) /;
/** What a number may be of that is neither a temperature nor a time. */
export const otherUnits =
  /^(people|persons|guests|of us|of them|heads|adults|minutes|hours|pounds|kilos|grams|ounces|bones?|ribs?|percent|%|more|extra|years|months|weeks|days|loops|places|spots|ways|turns|goes|seconds|layers|times|cups?|spoons?|tablespoons?|teaspoons?|potatoes|dollars|quid|pounds|miles|nil|all|each|bottles?|glasses|slices)\b/;

/** The words after a mark. */
export const after = (match: Match, mark: string): string =>
  match.line.slice(match.line.indexOf(mark) + mark.length + 1);

/** The words before a mark, with a blank before the first. */
export const before = (match: Match, mark: string): string =>
  ` ${match.line.slice(0, match.line.indexOf(mark))}`;

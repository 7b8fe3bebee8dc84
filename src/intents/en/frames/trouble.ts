/** The frame of trouble: what has gone wrong, by the thing and the word of its going wrong. */
import type { Frame, Match, Meaning } from '../../recogniser.ts';
import { momentOf } from '../recognisers/moment-of.ts';
import { dishNamed } from './dinner.ts';

const gone =
  / (out|off|gone|went|dead|died|dies|down|lost|cut|failed|failing|tripped|blown|blew|conked|carked|kaput|bust|broken|broke|packed|stopped|quit|quits|fused|missing|over|finished|outage|vanished) /;

export const troubleFrame: Frame = {
  name: 'trouble',
  moods: ['statement', 'negative'],
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    if (match.marks('nt').length > 0 || elsewhere.test(line)) return undefined;
    const power = / (power|current|electricity|electric|mains|fuse|breaker|fuse box|lights|light) /;
    const lamp = / (oven|little|red|orange|green|thermostat|indicator|heating) lights? /.test(line);
    if (power.test(line) && !lamp && match.line.split(' ').length <= 10) {
      if (/ (back|on again|returned|restored) /.test(line))
        return { intent: 'report-trouble', trouble: 'power-back', ...momentOf(match) };
      if (
        (gone.test(line) || / (no|not) /.test(line)) &&
        !/ (turn|turned|switch|switched|leave|left) /.test(line)
      )
        return { intent: 'report-trouble', trouble: 'power-out', ...momentOf(match) };
    }
    if (/ (oven|cooker|stove|element|pilot|burner|gas) /.test(line)) {
      if (/ (back|working again|fixed|going again|lit again) /.test(line) && !/ not /.test(line))
        return { intent: 'report-trouble', trouble: 'oven-back' };
      const dead =
        / (dead|died|dies|broken|broke|bust|kaput|conked|carked|packed|failed|gone out|gone cold|given up|out of order|blown|banjaxed|spoiled|knackered|not (coming|come|turn|turning|heat|heating|work|working|light|lighting|start|starting|getting hot|get hot|warm|warming)|no heat|stopped|stone cold|over|run out|ran out|error) /;
      if (dead.test(line) && !/ (out of the oven|door|out by) /.test(line))
        return { intent: 'report-trouble', trouble: 'oven-out' };
    }
    if (
      / oven door | door /.test(line) &&
      / (open|ajar|stuck|shut|close|latch) /.test(line) &&
      / (oven|left|not|will) /.test(line)
    )
      return { intent: 'report-trouble', trouble: 'door-open' };
    if (/ (probe|thermometer|instant-read|leave-in|display|screen|reading|sensor) /.test(line)) {
      const odd =
        / (weird|wrong|odd|strange|funny|blank|flat|dead|broken|off|jumping|jumps|stuck|bone|slipped|slid|fell|fallen|out|nonsense|wonky|dodgy|lying|rubbish|mad|crazy|nonsense|flickering|doubt|suspicious|battery|batteries|not (read|reading|working|work|right|trust|believe|showing)|error|acting up|playing up|unreliable|loose) /;
      if (
        odd.test(line) &&
        !/ (by the bone|near the bone|out of the oven|lost|find|have) /.test(line)
      )
        return { intent: 'report-trouble', trouble: 'probe-doubt' };
    }
    if (
      / (smoke|smoking|smoky|smokes) /.test(line) &&
      !/ (no smoking|break|cigarette|quit|outside|salmon|chimney|bbq|area|she|he|next door|neighbours) /.test(
        line,
      )
    )
      return { intent: 'report-trouble', trouble: 'smoking' };
    if (
      / (dropped|fell|fallen|spilled|spilt|knocked over|tipped|slid|slipped|on the floor|all over the floor) /.test(
        line,
      ) &&
      (/ floor /.test(line) ||
        !/ (temperature|heat|off|by|probe|thermometer|asleep|in love|out with|behind|for it|gran|mum|dad|child|power) /.test(
          line,
        ))
    ) {
      if (
        / (roast|joint|meat|beef|lamb|pork|it|thing|everything|lot|floor|tray|pan|dish) /.test(
          line,
        ) ||
        dishNamed(match.line, match)
      )
        return { intent: 'report-trouble', trouble: 'dropped', ...stepOf(match) };
    }
    if (
      / (burnt|burned|burning|scorched|charred|blackened|black|singed|incinerated|cremated|caught|catching) /.test(
        line,
      )
    ) {
      const dish = dishNamed(match.line, match);
      if (
        dish ||
        / (roast|joint|meat|top|bottom|crust|outside|edges|drippings|butter|garlic|it is|it has) /.test(
          line,
        )
      )
        if (!/ (hand|finger|arm|myself|me|tongue|mouth) /.test(line))
          return { intent: 'report-trouble', trouble: 'burnt', ...stepOf(match) };
    }
    if (
      / (cooked (it|that|the \w+) to (death|bits|a crisp)|to death|killed it|overcooked|overdone|cooked to death|overshot|too far|too done|dried out|way past|gone past|well past|grey all|dry as|boot leather|shoe leather) /.test(
        line,
      )
    )
      return { intent: 'report-trouble', trouble: 'overcooked', ...stepOf(match) };
    if (
      / (tough|chewy|leathery|rubbery|old boots|leather) /.test(line) &&
      / (it|meat|roast|joint|beef|lamb|pork|as|slice|slices|boots) /.test(line) &&
      !/ (day|week|crowd|luck|one to|call|question|guy|time|skin) /.test(line)
    )
      return { intent: 'report-trouble', trouble: 'tough' };
    if (
      / (raw|undercooked|underdone|still cold|still bloody|bleeding|mooing|not cooked|too rare|too pink) /.test(
        line,
      ) &&
      / (it|meat|roast|joint|middle|inside|centre|center|still|beef|lamb|pork) /.test(line)
    )
      return { intent: 'report-trouble', trouble: 'undercooked' };
    if (
      / (lumpy|split|curdled|separated|watery|too thin|too thick|too runny|boiled over|boiled dry|collapsed|sunk|flat|soggy|stuck to|still hard|too hard|too soft) /.test(
        line,
      ) &&
      (dishNamed(match.line, match) || / (gravy|sauce|butter|cream|batter|puddings) /.test(line))
    )
      return { intent: 'report-trouble', trouble: 'other', ...stepOf(match) };
    if (
      / (overwhelmed|panicking|panic|panicked|bedlam|chaos|stressed|drowning|too much|cope|hair out|up to my eyes|losing it|meltdown|all over the place|behind on everything|freaking|crying|tears|in a (flap|state|tizz|mess)|falling apart|pear shaped|mad in here) /.test(
        line,
      ) &&
      !/ (salt|sugar|wine|work|school|traffic|drink) /.test(line) &&
      match.line.split(' ').length <= 10
    )
      return { intent: 'report-trouble', trouble: 'overwhelmed' };
    return undefined;
  },
};

const elsewhere =
  / (last|yesterday|their|his|her|neighbours|next door|work|school|office|counties|county|news|city|town|street|song|film|movie|phone|car|laptop|tv|washing|battery pack|candle|dishwasher|kettle|heating|boiler|year|years|when i) /;

function stepOf(match: Match): { step?: string } {
  const dish = dishNamed(match.line, match);
  return dish ? { step: dish } : {};
}

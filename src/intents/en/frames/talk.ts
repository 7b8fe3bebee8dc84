/** Frames of the talk itself: quiet, again, wait, go on, from the top, help, take that back. */
import type { Frame, Match, Meaning } from '../../recogniser.ts';
import { holds } from './words.ts';

const every = ['statement', 'request', 'question', 'negative', 'intention', 'story'] as const;

/** In this order; the first whose words are all there. */
const talk: readonly { meaning: Meaning; words: readonly RegExp[]; not?: RegExp }[] = [
  {
    meaning: { intent: 'start-over' },
    words: [
      / (start|begin|restart|reset|wipe|clear|delete|scrap|erase|throw|forget|scratch|new|redo|from) /,
      / (over|again|scratch|fresh|beginning|start|everything|all of it|the lot|new|zero|anew|restart|reset|top|dinner|roast|away|afresh|scratch|square one) /,
    ],
    not: / (happy|merry|new year|fridge|freezer|thermometer|probe|friend|girlfriend|boyfriend|bringing|guest|timer|potatoes|say|said|tell|talking|listening|oven|rack|gravy|that again|add|potatoes|menu|a new one|butter|carrots|guests|started|starting|game|song|eat|eating|carve|carving|serve|serving|dessert|starter) /,
  },
  {
    meaning: { intent: 'undo' },
    words: [
      / (undo|revert|remove|rewind|unsay|withdraw|reverse|back|take|scratch|strike|cancel|forget|ignore|disregard|never mind|delete|erase|scrap|scrub|unsay|wind|belay|go back) /,
      / (that|it|last|this|said|entry|one|bit|step|undo|previous) /,
    ],
    not: / (<d\d+>|turned|timer|alarm|fridge|oven|step|potatoes|dinner|roast|call|tell|come|later|minutes|read|say|push|move|put it|back in|bring|out|dish|gravy|beans|way|over|thing you said|go on|everything|quiet|that one|this one|sear|off) /,
  },
  {
    meaning: { intent: 'quiet' },
    words: [
      / (quiet|silence|silent|hush|shush|mute|shut|zip|peace|schtum|talk less|less talk|be still|keep it down|leave me (alone|be)|pipe down) /,
    ],
    not: / (unmute|not quiet|kids|boys|girls|shut the (door|oven)|door|oven|shop|shops|store|butcher|butchers|street|neighbour|neighbours|window|it is (very |so |too )?quiet|cul|area|night|place) /,
  },
  {
    meaning: { intent: 'quiet' },
    words: [
      / (stop|no more|enough|less|not another|without|quit|cut|knock off|give over|not) /,
      / (talk|talking|speaking|speak|reminders|reminding|announcements|announcing|nagging|bugging|pestering|interrupting|chatter|chattering|word|nattering|noise|bothering|badgering|calling me|shouting|beeping|yapping|chat) /,
    ],
    not: / (kids|boys|girls|you two|dog|he|she|they|phone|timer|again|can not) /,
  },
  {
    meaning: { intent: 'resume' },
    words: [
      / (resume|unmute|unpause|continue|carry on|keep going|go on|go ahead|crack on|proceed|back|here again|ready|where were we|talk again|speak again|pick it up|pick up where|on with it|let us go|press on) /,
    ],
    not: / (potatoes|beans|dinner|roast|oven|it is|they|almost|nearly|not|guests|gravy|food|meal|push|put|go back|power|in|say|read|to|by|take|said) /,
  },
  {
    meaning: { intent: 'repeat' },
    words: [
      / (say|tell|repeat|read|go over|run|was|did you|missed|catch|hear|get|once|one|again|pardon|come|what) /,
      / (again|that you said|what you said|say what|you what|once more|more time|back to me|last thing you said|you said|you just said|missed that|catch that|hear (you|that)|get that|you say|that again|back) /,
    ],
    not: / (start|potatoes|roast|beans|oven|what is|how|guests|back in|i am back|never|them|he|she|they|children|class|after me|put|push|minutes|call|go on|heavy|weight|many|who|allerg\w+|nuts|cook|over) /,
  },
  {
    meaning: { intent: 'pause' },
    words: [
      / (wait|hold|hang|pause|moment|second|sec|tick|ticks|minute|minutes|later|busy|bear with|not now|not right now|freeze|half a mo|just a mo|time out|stop a|give me time|in a bit) /,
    ],
    not: / (later one|second one|dinner|roast|potatoes|oven|them|guests|timer|for an|until|till|pull|gravy|<d\d+> (for|till|late|behind|left|ago)|it|that long|how long|eat|remind|tell me|shout|late|second one|beans|carve|serve|carving|resting|for me|see you|talk to you) /,
  },
  {
    meaning: { intent: 'help' },
    words: [
      / (what|how|help|list|give|show|tell|explain|instructions|commands|not know) /,
      / (can you|do you do|you do|you know|you understand|you for|i say|i ask|commands|examples|use you|use this|talk to you|works|this work|you work|help with|say to you|what to say|you can do|things can i|instructions) /,
    ],
    not: / (roast|potatoes|butter|use (this|the) (probe|pan|oven|butter)|gravy|do you (think|want|reckon|pull|make|cook|french|carve|truss|tie)|next|now|guests|about (it|this)|if|instead|suggest|recommend) /,
  },
];

export const talkFrame: Frame = {
  name: 'talk',
  moods: every,
  build(match: Match): Meaning | undefined {
    if (match.line.split(' ').length > 9 || match.marks('ntcwgy').length > 0) return undefined;
    const line = ` ${match.line}`;
    return talk.find(
      ({ words, not }) => words.every((one) => one.test(line)) && !(not?.test(line) ?? false),
    )?.meaning;
  },
};

/** Questions of the day as a whole that hold no word of the roast. */
export const dayFrame: Frame = {
  name: 'day',
  moods: ['question', 'statement', 'request'],
  build(match: Match): Meaning | undefined {
    if (match.line.split(' ').length > 10 || match.marks('ntcwg').length > 0) return undefined;
    const asked =
      /^(what|how|is|are|will|any|anything|do|have|can|give|show|tell|update|where|list|read|did|am|which|and|so|walk|talk|run|go|let us|remind)/;
    if (!asked.test(match.line)) return undefined;
    if (
      holds(
        match,
        / (you feeling|your|weather|kids|school|work|film|tv|he|she|him|her|news|wine|dessert|pudding|score|match|game|party|holiday|trip|wedding) /,
      )
    )
      return undefined;
    if (
      /^(any|what|give|show|do|can|is|how|tell|are)/.test(match.line) &&
      holds(
        match,
        / (options|choices|alternatives|suggestions|suggest|recommend|ideas|would you do|rescue it|save it|fix it|fix this|save this|anything i can do|anything we can do|way out|way round|way around|plan b) /,
      )
    )
      return { intent: 'ask-options' };
    if (
      /^(is|are|will|am|have|did|how|update|where|does|do)/.test(match.line) &&
      holds(
        match,
        / (everything|things|schedule|on track|track|plan|make it|salvageable|overdone|over done|ok|all right|we|update me|ruined|wrecked|messed|blown|up to|getting on|looking|going|doing|far along|cutting it) /,
      ) &&
      !holds(
        match,
        / (to do|next|now do|put|start|buy|need|eat|serve|time|leave|people|guests|how do|how long) /,
      )
    )
      return { intent: 'ask-status' };
    if (
      holds(
        match,
        / (timeline|schedule|plan|remains|remaining|left|coming up|day look|afternoon look|evening look|all the steps|the steps|next steps|order|agenda|itinerary|sequence|still to do|to be done|lies ahead|ahead of (me|us)) /,
      )
    )
      return { intent: 'ask-plan' };
    if (
      holds(
        match,
        / (do i do|do next|to do|do now|doing now|i do|i start|should i do|want me to do|what first|what now|and now|comes first|start with|begin with) /,
      )
    )
      return { intent: 'ask-next' };
    return undefined;
  },
};

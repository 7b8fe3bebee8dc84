/** In what order the heat comes: sear first, sear last, steady. */
import type { Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

const tell = ['statement', 'request', 'intention'] as const;

export const method: Recogniser = {
  name: 'method',
  moods: tell,
  phrases: [
    ...phrases(
      [
        '(reverse sear|sear [it|@it] (at the end|last|after|afterwards)|low and slow then sear|sear last|finish with a sear|sear to finish|brown it at the end|low first)',
      ],
      { intent: 'set-method', method: 'sear-last' },
    ),
    ...phrases(
      [
        '(sear [it|@it] first|first (very|really|quite) hot|first hot|hot and then low|high then low|hot then low|hot then cool|start [it] (hot|high)|hot first|sear (at the start|to start)|blast it first|high heat first|brown it first|hot start)',
      ],
      { intent: 'set-method', method: 'sear-first' },
    ),
    ...phrases(
      [
        '^ [at] {n:number} (heat|temperature) (from start to finish|start to finish|all the way|throughout|from beginning to end|the whole time|only|all through)',
        '(no sear|without searing|steady (oven|heat|temperature)|^ steady $|one steady temperature|same (heat|temperature) (the whole way|from start to finish|start to finish|from beginning to end|the whole time|always)|one (heat|temperature) (from start to finish|start to finish|all the way|throughout|from beginning to end|the whole time)|same temperature (all the way|throughout)|one temperature|low and slow [all the way|throughout]|do not sear it|not searing [it])',
      ],
      { intent: 'set-method', method: 'steady' },
    ),
  ],
};

/** A step on the day, to be touched for its reason: a piece of paper, or a spot on what is drawn already. */
import type { ComponentChildren } from 'preact';
import type { Mark, MarkState } from '../pack.ts';
import { capital, clock, type Manner } from '../show.ts';
import type { Step } from '../wire.ts';
import { words } from '../words.ts';

interface TouchProps {
  step: Step;
  state: MarkState;
  manner: Manner;
  /** What it is called aloud; begins with the words that are seen on it. */
  name: string;
  look: string;
  chosen: boolean;
  focusable: boolean;
  choose(): void;
}

export function Touch(props: TouchProps & { children: ComponentChildren }) {
  const { step, state, manner, name, look, chosen, focusable, choose, children } = props;
  const times = words.stepTimes(clock(step.start, manner), clock(step.end, manner));
  const press = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    choose();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: there is no button element inside an SVG
    <g
      role="button"
      tabindex={focusable ? 0 : -1}
      data-step={step.id}
      aria-label={`${name}, ${times}, ${words.stepState[state]}`}
      class={`${look} is-${state}${chosen ? ' is-chosen' : ''}`}
      onClick={choose}
      onKeyDown={press}
    >
      {children}
    </g>
  );
}

export function Piece(
  props: Omit<TouchProps, 'step' | 'state' | 'name' | 'look'> & {
    mark: Mark;
    y: number;
    height: number;
  },
) {
  const { mark, y, height, ...rest } = props;
  const { step, x, width, state, label, inside } = mark;
  const middle = y + height / 2;
  return (
    <Touch
      {...{ step, state, ...rest }}
      name={label ?? capital(step.title)}
      look={`piece in-${mark.lane}${inside ? ' has-inside' : ''}`}
    >
      <rect
        class="reach"
        x={x - 8}
        y={y - 3}
        width={Math.max(width + 16, 36)}
        height={height + 7}
      />
      <rect class="paper" x={x} y={y} width={width} height={height} />
      {label && (
        <text class="label" x={inside ? x + 5 : x + width + 5} y={middle + 5.5}>
          {label}
        </text>
      )}
      {(state === 'done' || state === 'taken') && (
        <line class="struck" x1={x - 3} x2={x + width + 3} y1={middle + 2} y2={middle - 2} />
      )}
    </Touch>
  );
}

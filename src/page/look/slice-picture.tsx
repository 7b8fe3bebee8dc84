/** The cut face, drawn to scale from the forecast; nothing is drawn where the forecast has none. */
import { degrees, type Manner } from '../show.ts';
import { faceOf, type SliceFace } from '../slice.ts';
import type { View } from '../wire.ts';
import { words } from '../words.ts';

/** A slice of a rib or a loin is wider than high; the forecast's is round. */
const wider = 1.3;
const pixels = 112;
const ruleMillimetres = 50;

export function SlicePicture({ view, manner }: { view: View; manner: Manner }) {
  const face = view.forecast && faceOf(view.forecast.slice);
  if (!face) return null;
  const { sliceIfPulledNow } = view.forecast!;
  const now = sliceIfPulledNow && faceOf(sliceIfPulledNow);
  // One scale for both, so that they can be held against each other.
  const scale = pixels / (2 * Math.max(face.radiusMillimetres, now?.radiusMillimetres ?? 0));
  return (
    <aside class="slices" aria-label={words.slice}>
      <Face {...{ face, scale, manner }} title={words.sliceAs} />
      {now && <Face {...{ face: now, scale, manner }} title={words.sliceIfNow} />}
    </aside>
  );
}

function Face(props: { face: SliceFace; title: string; scale: number; manner: Manner }) {
  const { face, title, scale, manner } = props;
  const told = words.sliceTold(
    Math.round(face.rimMillimetres),
    Math.round(face.pinkMillimetres),
    degrees(face.coreFahrenheit, manner),
  );
  const width = pixels * wider + 8;
  const middle = pixels / 2 + 4;
  const rule = ruleMillimetres * scale;
  return (
    <figure>
      <figcaption>
        {words.slice}, {title}
      </figcaption>
      <svg role="img" aria-label={told} viewBox={`0 0 ${width} ${pixels + 26}`}>
        <title>{told}</title>
        {face.zones.map(({ zone, radiusMillimetres }) => (
          <ellipse
            key={zone}
            class={`zone-${zone}`}
            cx={width / 2}
            cy={middle}
            // The rim is as deep at the side as above: the oval is the round one stretched in its middle.
            rx={(radiusMillimetres + face.radiusMillimetres * (wider - 1)) * scale}
            ry={radiusMillimetres * scale}
          />
        ))}
        <path class="rule" d={`M4 ${pixels + 14}v6h${rule}v-6`} />
        <text x={rule + 10} y={pixels + 22}>
          {ruleMillimetres} {words.millimetres}
        </text>
      </svg>
      <p>{told}</p>
    </figure>
  );
}

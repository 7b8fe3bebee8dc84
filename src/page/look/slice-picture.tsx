/** The cut face, drawn to scale from the forecast. */
import type { Manner } from '../show.ts';
import type { View } from '../wire.ts';

export function SlicePicture(_props: { view: View; manner: Manner }) {
  return null;
}

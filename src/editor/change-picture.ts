/** A change that was worked out for a diagram, as it would look. */
import { change, recorded, type Change, type Diagram, type ItemKey } from '#core/diagram';
import { pictureOfChange, type Picture } from '#core/drawing';
import { PALETTES, type ThemeName } from '#core/graphics';

export interface PictureAsk {
	readonly patches: Change['patches'];
	readonly theme: ThemeName;
	/** Shown too, so that one sees where it is. */
	readonly around: readonly ItemKey[];
}

export const picture = (diagram: Diagram, { patches, theme, around }: PictureAsk): Picture | null =>
	pictureOfChange(diagram, change(diagram, recorded({ label: '', of: diagram, patches })).diagram, PALETTES[theme], around);

/** Where parts and their terminals are on the drawing. */
export { partBox, place, placeBox, placedTerminal, poseOf, sideToward, terminalPoint, type PlacedTerminal, type Pose } from './pose.ts';

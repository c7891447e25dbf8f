// What few readers of a club's page come to: the element loads it when it is wanted (see page/later.ts).
export { familyKeeper } from "../keeping/family-keeper";
export { listsAtHand } from "../keeping/lists-at-hand";
export { SideBySide } from "./beside/side-by-side";
export { BikeCard } from "./bike/bike-card";
export { ClubDay } from "./club/club-day";
export { KeepScreen } from "./keep/keep-screen";
export { TheList } from "./the-list";

// What an element loads when it is wanted. It shares the app's code instead of having its own: for that it imports the app.
import "./element-app";

export * from "../screens/later-parts";

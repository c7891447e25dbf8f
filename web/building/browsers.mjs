// The oldest browsers that anything of the page is written for, as the bundler calls them.
export const browsers = ["chrome111", "firefox121", "safari16.4"];

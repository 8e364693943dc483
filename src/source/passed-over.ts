/* Ignored files and folders: hidden ones, and those that operating systems and programs leave beside a club's own. */
const LEFT_BEHIND = /^(?:thumbs\.db|ehthumbs\.db|desktop\.ini|__macosx|icon\r|\$recycle\.bin|system volume information)$|^~\$|~$|^#.*#$/i;

export const isPassedOver = (name: string): boolean => name.startsWith('.') || LEFT_BEHIND.test(name);

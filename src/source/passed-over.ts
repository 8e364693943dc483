/* Which files and folders of a club are not read: hidden ones, and what systems and programs lay beside files, mostly unseen by who looks at the folder. */
const LEFT_BEHIND = /^(?:thumbs\.db|ehthumbs\.db|desktop\.ini|__macosx)$|^~\$|~$/i;

export const isPassedOver = (name: string): boolean => name.startsWith('.') || LEFT_BEHIND.test(name);

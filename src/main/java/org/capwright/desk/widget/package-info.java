/** Small pieces that several views are made of. They know nothing of caps. */
package org.capwright.desk.widget;

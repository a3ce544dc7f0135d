/**
 * What every centrifugal pump of an appliance has in common, whether it drains or washes: its
 * words, what it was made for, its winding, its faults and its checks. It knows no hose and no
 * jets: what a pump works against, the parts say.
 */
package kelter.hydraulics.pumppart;
